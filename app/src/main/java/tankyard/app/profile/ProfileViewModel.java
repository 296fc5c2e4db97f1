package tankyard.app.profile;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.value.ObservableValue;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import tankyard.app.edit.Selection;
import tankyard.app.edit.ViewSettings;
import tankyard.app.figures.Digits;
import tankyard.app.profile.ProfilePicture.Spot;
import tankyard.app.solve.Freshness;
import tankyard.app.solve.SolveService;
import tankyard.app.solve.Solved;
import tankyard.engine.api.LeaseAnswer;
import tankyard.engine.lease.Line;
import tankyard.engine.lease.Service;
import tankyard.engine.units.Dimension;
import tankyard.engine.units.Figures;

/** Which line is shown, and what there is along it. */
public final class ProfileViewModel {
  private static final String NO_LINE =
      "Draw a line between two things: then this shows the ground, the pipe and the pressure along"
          + " it.";
  private static final String NO_RESULT = "Nothing has been worked out along this line yet.";

  private final Selection selection;
  private final ViewSettings view;
  private final SolveService solve;
  private final ObservableList<LineChoice> choices = FXCollections.observableArrayList();
  private final ReadOnlyObjectWrapper<LineChoice> chosen =
      new ReadOnlyObjectWrapper<>(this, "chosen");
  private final ReadOnlyObjectWrapper<Optional<ProfilePicture>> picture =
      new ReadOnlyObjectWrapper<>(this, "picture", Optional.empty());
  private final ReadOnlyStringWrapper emptyWords =
      new ReadOnlyStringWrapper(this, "emptyWords", NO_LINE);

  public ProfileViewModel(Selection selection, ViewSettings view, SolveService solve) {
    this.selection = selection;
    this.view = view;
    this.solve = solve;
    solve.latestProperty().addListener((o, was, is) -> refresh());
    selection.idsProperty().addListener((o, was, is) -> refresh());
    view.unitsProperty().addListener((o, was, is) -> refresh());
    view.caseIdProperty().addListener((o, was, is) -> refresh());
    refresh();
  }

  ObservableList<LineChoice> choices() {
    return choices;
  }

  ReadOnlyObjectProperty<LineChoice> chosenProperty() {
    return chosen.getReadOnlyProperty();
  }

  ReadOnlyObjectProperty<Optional<ProfilePicture>> pictureProperty() {
    return picture.getReadOnlyProperty();
  }

  ReadOnlyStringProperty emptyWordsProperty() {
    return emptyWords.getReadOnlyProperty();
  }

  ObservableValue<Freshness> freshness() {
    return solve.freshnessProperty();
  }

  /** Shows a line, here and on the map. */
  void choose(LineChoice choice) {
    if (choice != null && !choice.equals(chosen.get())) {
      chosen.set(choice);
      selection.reveal(choice.lineId());
      refresh();
    }
  }

  /** What there is at a distance, in words. */
  String readOut(double distance) {
    return picture.get().map(p -> words(p, p.at(distance))).orElse("");
  }

  private String words(ProfilePicture p, Spot spot) {
    String unit = " " + p.lengthUnit();
    String pressure =
        spot.partFull()
            ? "part full, no pressure"
            : Digits.withUnit(view.units().unit(Dimension.PRESSURE), spot.pressure());
    return "At "
        + ProfileMaker.whole(spot.distance())
        + unit
        + ": ground "
        + Figures.decimals(spot.ground(), 1)
        + unit
        + ", pipe "
        + Figures.decimals(spot.pipe(), 1)
        + unit
        + " ("
        + depth(spot, unit)
        + "), "
        + pressure
        + gas(p, spot);
  }

  private static String gas(ProfilePicture p, Spot spot) {
    String words = p.gasWords(spot.distance());
    return words.isEmpty() ? "" : "; " + words;
  }

  private static String depth(Spot spot, String unit) {
    double depth = spot.ground() - spot.pipe();
    return Figures.decimals(Math.abs(depth), 1) + unit + (depth < 0 ? " above it" : " deep");
  }

  private void refresh() {
    Optional<LeaseAnswer> answer = solve.latest().map(Solved::answer);
    List<Line> lines = answer.map(a -> a.lease().lines()).orElse(List.of());
    List<LineChoice> now =
        lines.stream()
            .sorted(Comparator.comparing(l -> l.service() != Service.WATER_LEG))
            .map(l -> new LineChoice(l.id(), l.name() + "  (" + l.kind() + ")"))
            .toList();
    if (!choices.equals(now)) {
      choices.setAll(now);
    }
    chosen.set(wanted(now));
    picture.set(answer.flatMap(this::picture));
    emptyWords.set(picture.get().isPresent() ? "" : now.isEmpty() ? NO_LINE : NO_RESULT);
  }

  /** The line picked on the map; else the one shown before; else the first water leg. */
  private LineChoice wanted(List<LineChoice> now) {
    String picked = selection.single().orElse("");
    String before = chosen.get() == null ? "" : chosen.get().lineId();
    return now.stream()
        .filter(c -> c.lineId().equals(picked))
        .findFirst()
        .or(() -> now.stream().filter(c -> c.lineId().equals(before)).findFirst())
        .or(() -> now.stream().findFirst())
        .orElse(null);
  }

  private Optional<ProfilePicture> picture(LeaseAnswer answer) {
    if (chosen.get() == null) {
      return Optional.empty();
    }
    String id = chosen.get().lineId();
    return answer
        .lease()
        .line(id)
        .flatMap(
            line ->
                answer
                    .designCase(view.caseId())
                    .flatMap(c -> c.line(id))
                    .flatMap(r -> new ProfileMaker(answer.lease(), view.units()).picture(line, r)));
  }
}
