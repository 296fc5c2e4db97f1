package tankyard.app.profile;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleFunction;
import java.util.function.ToDoubleFunction;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.Region;
import javafx.scene.shape.Line;
import javafx.scene.shape.Polygon;
import javafx.scene.shape.Polyline;
import tankyard.app.chart.Axis;
import tankyard.app.chart.Scale;
import tankyard.app.profile.ProfilePicture.Crest;
import tankyard.app.profile.ProfilePicture.Spot;
import tankyard.app.profile.ProfilePicture.Stretch;

/** Draws a profile and a read-out that follows the pointer or the arrow keys. */
final class ProfilePlot extends Region {
  private static final double LEFT = 62;
  private static final double RIGHT = 16;
  private static final double TOP = 26;
  private static final double FOOT = 38;
  private static final double KEY_STEPS = 50; // arrow presses from end to end

  private final ProfilePicture picture;
  private final DoubleFunction<String> readOut;
  private final Ticks ticksAcross;
  private final Ticks ticksUp;
  private final Polygon earth = new Polygon();
  private final Polyline ground = styled(new Polyline(), "profile-ground");
  private final Polyline pipe = styled(new Polyline(), "profile-pipe");
  private final Polyline head = styled(new Polyline(), "profile-head");
  private final List<Region> partFull = new ArrayList<>();
  private final Polygon crestSign = styled(new Polygon(0, 0, 5, 9, -5, 9), "profile-crest");
  private final Label crestWords = label("profile-crest-words");
  private final Line cursor = styled(new Line(), "profile-cursor");
  private final Label words = label("profile-read-out");
  private final Label fromName;
  private final Label toName;
  private double cursorAt = Double.NaN;

  ProfilePlot(ProfilePicture picture, DoubleFunction<String> readOut) {
    this.picture = picture;
    this.readOut = readOut;
    setId("profile-plot");
    getStyleClass().add("profile-plot");
    ticksAcross = new Ticks(picture.across(), " " + picture.lengthUnit());
    ticksUp = new Ticks(picture.up(), " " + picture.lengthUnit());
    fromName = label("profile-end");
    fromName.setText(picture.fromName());
    toName = label("profile-end");
    toName.setText(picture.toName());
    earth.getStyleClass().add("profile-earth");
    words.setId("profile-read-out");
    build();
    setFocusTraversable(true);
    setAccessibleText("Profile of " + picture.title());
    setOnMouseMoved(e -> moveCursor(across().value(e.getX())));
    setOnMouseExited(e -> moveCursor(Double.NaN));
    setOnMousePressed(e -> requestFocus());
    setOnKeyPressed(this::onKey);
    setMinSize(320, 140);
  }

  private void build() {
    getChildren().addAll(ticksAcross.lines);
    getChildren().addAll(ticksUp.lines);
    getChildren().add(earth);
    for (int i = 0; i < picture.partFull().size(); i++) {
      Region hatch = new Region();
      hatch.getStyleClass().add("profile-part-full");
      hatch.setMouseTransparent(true);
      partFull.add(hatch);
    }
    getChildren().addAll(partFull);
    getChildren().addAll(ground, pipe);
    if (picture.hasHead()) {
      getChildren().add(head);
    }
    getChildren().addAll(ticksAcross.labels);
    getChildren().addAll(ticksUp.labels);
    getChildren().addAll(fromName, toName);
    picture.crest().ifPresent(c -> getChildren().addAll(crestSign, crestWords));
    getChildren().addAll(cursor, words);
    cursor.setVisible(false);
    words.setVisible(false);
  }

  private Scale across() {
    return Scale.of(picture.across(), LEFT, Math.max(LEFT + 1, getWidth() - RIGHT));
  }

  private Scale up() {
    return Scale.of(picture.up(), Math.max(TOP + 1, getHeight() - FOOT), TOP);
  }

  @Override
  protected void layoutChildren() {
    Scale across = across();
    Scale up = up();
    double foot = getHeight() - FOOT;
    ticksAcross.layoutAcross(across, TOP, foot);
    ticksUp.layoutUp(up, LEFT, getWidth() - RIGHT);
    draw(ground, Spot::ground, across, up);
    draw(pipe, Spot::pipe, across, up);
    draw(head, Spot::head, across, up);
    earth.getPoints().setAll(ground.getPoints());
    earth.getPoints().addAll(across.place(picture.length()), foot, across.place(0), foot);
    for (int i = 0; i < partFull.size(); i++) {
      Stretch stretch = picture.partFull().get(i);
      double left = across.place(stretch.from());
      partFull
          .get(i)
          .resizeRelocate(left, TOP, across.place(stretch.to()) - left, Math.max(0, foot - TOP));
    }
    picture.crest().ifPresent(c -> layoutCrest(c, across, up));
    put(fromName, LEFT, foot + 18);
    put(toName, across.place(picture.length()) - toName.prefWidth(-1), foot + 18);
    layoutCursor(across, foot);
  }

  private void draw(Polyline line, ToDoubleFunction<Spot> value, Scale across, Scale up) {
    List<Double> points = new ArrayList<>();
    for (Spot spot : picture.spots()) {
      points.add(across.place(spot.distance()));
      points.add(up.place(value.applyAsDouble(spot)));
    }
    line.getPoints().setAll(points);
  }

  private void layoutCrest(Crest crest, Scale across, Scale up) {
    double x = across.place(crest.distance());
    double y = up.place(crest.pipe());
    crestSign.relocate(x - 5, y + 3);
    crestWords.setText(crest.words());
    double width = crestWords.prefWidth(-1);
    double left = x + 8 + width > getWidth() - RIGHT ? x - 8 - width : x + 8;
    put(crestWords, left, Math.min(y + 4, getHeight() - FOOT - 20));
  }

  private void moveCursor(double distance) {
    cursorAt = distance;
    requestLayout();
  }

  private void layoutCursor(Scale across, double foot) {
    boolean shown = cursorAt >= 0 && cursorAt <= picture.length();
    cursor.setVisible(shown);
    words.setVisible(shown);
    if (shown) {
      double x = across.sharp(cursorAt);
      cursor.setStartX(x);
      cursor.setEndX(x);
      cursor.setStartY(TOP);
      cursor.setEndY(foot);
      words.setText(readOut.apply(cursorAt));
      double width = words.prefWidth(-1);
      put(words, Math.max(LEFT, Math.min(x - width / 2, getWidth() - RIGHT - width)), 2);
    }
  }

  private void onKey(KeyEvent event) {
    double step = picture.length() / KEY_STEPS;
    double from = Double.isNaN(cursorAt) ? 0 : cursorAt;
    switch (event.getCode()) {
      case RIGHT -> moveCursor(Math.min(picture.length(), from + step));
      case LEFT -> moveCursor(Math.max(0, from - step));
      case HOME -> moveCursor(0);
      case END -> moveCursor(picture.length());
      default -> {
        return;
      }
    }
    event.consume();
  }

  private static void put(Label label, double x, double y) {
    label.resizeRelocate(x, y, label.prefWidth(-1), label.prefHeight(-1));
  }

  private static Label label(String style) {
    Label label = new Label();
    label.getStyleClass().add(style);
    label.setMouseTransparent(true);
    return label;
  }

  private static <N extends Node> N styled(N node, String style) {
    node.getStyleClass().add(style);
    node.setMouseTransparent(true);
    return node;
  }

  /** The lines and numbers of one axis. */
  private static final class Ticks {
    private final Axis axis;
    private final List<Line> lines = new ArrayList<>();
    private final List<Label> labels = new ArrayList<>();

    Ticks(Axis axis, String unit) {
      this.axis = axis;
      List<Double> ticks = axis.ticks();
      for (int i = 0; i < ticks.size(); i++) {
        lines.add(styled(new Line(), "profile-grid"));
        Label label = label("profile-tick");
        label.setText(axis.label(ticks.get(i)) + (i == ticks.size() - 1 ? unit : ""));
        labels.add(label);
      }
    }

    void layoutAcross(Scale scale, double top, double foot) {
      for (int i = 0; i < lines.size(); i++) {
        double x = scale.sharp(axis.ticks().get(i));
        set(lines.get(i), x, top, x, foot + 3);
        double width = labels.get(i).prefWidth(-1);
        put(labels.get(i), Math.min(x - width / 2, scale.to() + RIGHT / 2 - width), foot + 3);
      }
    }

    void layoutUp(Scale scale, double left, double right) {
      for (int i = 0; i < lines.size(); i++) {
        double y = scale.sharp(axis.ticks().get(i));
        set(lines.get(i), left - 3, y, right, y);
        double width = labels.get(i).prefWidth(-1);
        put(labels.get(i), left - 6 - width, y - labels.get(i).prefHeight(-1) / 2);
      }
    }

    private static void set(Line line, double x1, double y1, double x2, double y2) {
      line.setStartX(x1);
      line.setStartY(y1);
      line.setEndX(x2);
      line.setEndY(y2);
    }
  }
}
