package tankyard.app.example;

import java.util.ArrayList;
import java.util.List;
import tankyard.app.files.Dialogs;

/** Answers as it was told to and keeps what was asked. */
public final class TestDialogs implements Dialogs {
  private final List<String> asked = new ArrayList<>();
  private Unsaved unsaved = Unsaved.STAY;
  private boolean yes;

  public void answerUnsaved(Unsaved answer) {
    unsaved = answer;
  }

  public void answer(boolean answer) {
    yes = answer;
  }

  /** What was asked or told so far, titles and words. */
  public List<String> asked() {
    return asked;
  }

  @Override
  public Unsaved askUnsaved(String leaseName) {
    asked.add("unsaved " + leaseName);
    return unsaved;
  }

  @Override
  public boolean ask(String title, String words, String yesWords) {
    asked.add(title + "\n" + words);
    return yes;
  }

  @Override
  public void tell(String title, String words) {
    asked.add(title + "\n" + words);
  }
}
