package tankyard.app.profile;

import tankyard.app.example.Desk;
import tankyard.app.example.Pictures;

/** Pictures of a profile. */
public final class ProfilePictures {
  private ProfilePictures() {}

  public static void take(Pictures pictures, boolean dark) {
    Desk desk = new Desk();
    ProfileView view = new ProfileView(new ProfileViewModel(desk.selection, desk.view, desk.solve));
    pictures.take("profile", view, 1240, 300, dark);
  }
}
