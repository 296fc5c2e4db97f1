package tankyard.app.pressure;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javafx.geometry.Orientation;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.Region;
import javafx.scene.shape.Line;
import tankyard.app.chart.Flags;
import tankyard.app.chart.Flags.Flag;
import tankyard.app.chart.Flags.Side;
import tankyard.app.chart.Flags.Spot;
import tankyard.app.chart.Scale;
import tankyard.app.pressure.WindowPicture.Mark;
import tankyard.engine.working.Working;

/** Draws one window: flags above, the bar, small flags below, the axis at the foot. */
final class WindowBar extends Region {
  static final double BAR_HEIGHT = 34;
  private static final double LANE_GAP = 4;
  private static final double POLE = 10; // from the bar to the nearest label
  private static final double FOOT = 22;
  private static final double INSET = 12; // half a tick's label stands out on either side
  private static final double GAP = 14;

  private final WindowPicture picture;
  private final BarZones zones;
  private final List<FlagNode> above = new ArrayList<>();
  private final List<FlagNode> below = new ArrayList<>();
  private final List<Line> grid = new ArrayList<>();
  private final List<Label> ticks = new ArrayList<>();

  /** A label, its pole and the place both belong to. */
  private record FlagNode(double value, Side side, Region label, Line pole, Node sign) {}

  WindowBar(
      WindowPicture picture, Consumer<String> select, Consumer<Supplier<Working>> showWorking) {
    this.picture = picture;
    getStyleClass().add("window-bar");
    setId("window-" + picture.separatorId());
    FlagLabels labels = new FlagLabels(picture.unit(), select, showWorking);
    addTicks();
    zones = new BarZones(picture);
    getChildren().addAll(zones.nodes());
    addFlags(labels);
    addAll(above);
    addAll(below);
    setAccessibleText(picture.title() + ". " + picture.verdict());
  }

  @Override
  public Orientation getContentBias() {
    return Orientation.HORIZONTAL;
  }

  @Override
  protected double computePrefHeight(double width) {
    return topHeight(width) + BAR_HEIGHT + lowHeight(width) + FOOT;
  }

  @Override
  protected double computeMinHeight(double width) {
    return computePrefHeight(width);
  }

  @Override
  protected double computePrefWidth(double height) {
    return 640;
  }

  @Override
  protected double computeMinWidth(double height) {
    return 320;
  }

  @Override
  protected void layoutChildren() {
    double width = getWidth();
    Scale scale = scale(width);
    double barTop = topHeight(width);
    double foot = barTop + BAR_HEIGHT + lowHeight(width);
    layoutTicks(scale, barTop, foot);
    zones.layout(scale, barTop);
    layoutFlags(above, scale, width, barTop, true);
    layoutFlags(below, scale, width, barTop + BAR_HEIGHT, false);
  }

  private void addTicks() {
    for (double tick : picture.axis().ticks()) {
      Line line = new Line();
      line.getStyleClass().add("bar-grid");
      grid.add(line);
      boolean last = ticks.size() == picture.axis().ticks().size() - 1;
      Label label = new Label(picture.axis().label(tick) + (last ? " " + picture.unit() : ""));
      label.getStyleClass().add("bar-tick");
      ticks.add(label);
    }
    getChildren().addAll(grid);
    getChildren().addAll(ticks);
  }

  private void addFlags(FlagLabels labels) {
    // The ends' words hang away from each other, also where the ends have crossed.
    Side low = picture.isCrossed() ? Side.RIGHT : Side.LEFT;
    Side high = picture.isCrossed() ? Side.LEFT : Side.RIGHT;
    picture
        .least()
        .ifPresent(e -> above.add(flag(e.value(), low, labels.end("least", e), "end", null)));
    picture
        .most()
        .ifPresent(e -> above.add(flag(e.value(), high, labels.end("most", e), "end", null)));
    picture.setting().ifPresent(s -> above.add(setting(s, labels)));
    for (Mark mark : picture.marks()) {
      Node sign = FlagLabels.sign(mark.kind());
      below.add(flag(mark.value(), Side.RIGHT, labels.mark(mark), "mark", sign));
    }
  }

  private static FlagNode setting(WindowPicture.SettingMark setting, FlagLabels labels) {
    Node sign = FlagLabels.settingSign();
    return flag(setting.value(), Side.RIGHT, labels.setting(setting), "setting", sign);
  }

  private static FlagNode flag(double value, Side side, Region label, String style, Node sign) {
    Line pole = new Line();
    pole.getStyleClass().addAll("bar-pole", style + "-pole");
    return new FlagNode(value, side, label, pole, sign);
  }

  /** Poles first, so that none lies over a label. */
  private void addAll(List<FlagNode> flags) {
    flags.forEach(f -> getChildren().add(f.pole()));
    flags.forEach(f -> getChildren().add(f.label()));
    flags.stream().filter(f -> f.sign() != null).forEach(f -> getChildren().add(f.sign()));
  }

  private Scale scale(double width) {
    return Scale.of(picture.axis(), INSET, Math.max(INSET + 1, width - INSET));
  }

  private double topHeight(double width) {
    return height(above, width);
  }

  private double lowHeight(double width) {
    return height(below, width);
  }

  private double height(List<FlagNode> flags, double width) {
    if (flags.isEmpty()) {
      return 0;
    }
    List<Spot> spots = spots(flags, width);
    return POLE + nearEdge(Flags.lanes(spots), flags, spots);
  }

  /** How far a lane begins from the nearest one: the lanes before it are as high as they must. */
  private static double nearEdge(int lane, List<FlagNode> flags, List<Spot> spots) {
    double edge = 0;
    for (int l = 0; l < lane; l++) {
      double highest = 0;
      for (int i = 0; i < flags.size(); i++) {
        if (spots.get(i).lane() == l) {
          highest = Math.max(highest, flags.get(i).label().prefHeight(-1));
        }
      }
      edge += highest + LANE_GAP;
    }
    return edge;
  }

  private List<Spot> spots(List<FlagNode> flags, double width) {
    Scale scale = scale(width);
    List<Flag> wanted =
        flags.stream()
            .map(f -> new Flag(scale.place(f.value()), f.label().prefWidth(-1), f.side()))
            .toList();
    return new Flags(0, width, GAP).place(wanted);
  }

  private void layoutFlags(
      List<FlagNode> flags, Scale scale, double width, double edge, boolean up) {
    List<Spot> spots = spots(flags, width);
    for (int i = 0; i < flags.size(); i++) {
      FlagNode flag = flags.get(i);
      double height = flag.label().prefHeight(-1);
      double near = POLE + nearEdge(spots.get(i).lane(), flags, spots);
      double top = up ? edge - near - height : edge + near;
      flag.label().resizeRelocate(spots.get(i).left(), top, flag.label().prefWidth(-1), height);
      double x = scale.sharp(flag.value());
      place(flag.pole(), x, up ? top + 2 : edge, up ? edge : top + height - 2);
      if (flag.sign() != null) {
        flag.sign().relocate(x - 5, up ? edge - 10 : edge - 5);
      }
    }
  }

  private void layoutTicks(Scale scale, double barTop, double foot) {
    List<Double> values = picture.axis().ticks();
    for (int i = 0; i < values.size(); i++) {
      double x = scale.sharp(values.get(i));
      place(grid.get(i), x, barTop, foot + 3);
      Label label = ticks.get(i);
      double wide = label.prefWidth(-1);
      double left = Math.min(x - wide / 2, getWidth() - wide);
      label.resizeRelocate(left, foot + 4, wide, label.prefHeight(-1));
    }
  }

  private static void place(Line line, double x, double y1, double y2) {
    line.setStartX(x);
    line.setEndX(x);
    line.setStartY(y1);
    line.setEndY(y2);
  }
}
