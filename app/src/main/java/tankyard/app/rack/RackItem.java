package tankyard.app.rack;

import java.util.Locale;
import javafx.scene.canvas.Canvas;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.Tooltip;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseButton;
import javafx.scene.input.MouseEvent;
import tankyard.app.edit.Hand;
import tankyard.app.edit.Hand.InHand;
import tankyard.app.edit.ThingKind;
import tankyard.app.style.Inks;
import tankyard.app.style.Look;
import tankyard.app.style.Symbols;
import tankyard.engine.lease.Service;
import tankyard.engine.lease.Status;

/**
 * One item of the rack. Click it and then the map, or drag it there; with keys, Enter takes it in
 * hand and the arrows set it down. Plain press, drag and release: the system's own drag and drop
 * leaves the window and can't show where a thing will land.
 */
final class RackItem extends ToggleButton {
  private static final double DRAG_PX = 5;
  private static final double PICTURE_PX = 26;

  private final Hand hand;
  private final InHand what;
  private MouseEvent pressed;
  private boolean carrying;

  private RackItem(Hand hand, InHand what, String words, String reason) {
    super(words);
    this.hand = hand;
    this.what = what;
    setId("rack-" + what.name().toLowerCase(Locale.ROOT).replace('_', '-'));
    getStyleClass().add("ty-rack-item");
    setMaxWidth(Double.MAX_VALUE);
    setTooltip(new Tooltip(reason));
    setAccessibleText(words + ". " + reason);
    setOnAction(e -> toggle());
    hand.inHandProperty().addListener((o, before, now) -> setSelected(now == what));
    addEventFilter(MouseEvent.MOUSE_PRESSED, this::press);
    addEventFilter(MouseEvent.MOUSE_DRAGGED, this::drag);
    addEventFilter(MouseEvent.MOUSE_RELEASED, this::release);
    addEventFilter(KeyEvent.KEY_PRESSED, this::key);
  }

  static RackItem thing(Hand hand, InHand what, ThingKind kind, Look look) {
    String words = capital(kind.words());
    RackItem item = new RackItem(hand, what, words, reason(kind));
    item.setGraphic(picture(look, (g, inks) -> symbol(g, inks, kind)));
    return item;
  }

  static RackItem line(Hand hand, Look look) {
    RackItem item =
        new RackItem(
            hand,
            InHand.LINE,
            "Line",
            "Click the thing it starts at, corners, and the thing it ends at. What it carries"
                + " follows from its ends. Key: L");
    item.setGraphic(picture(look, RackItem::pen));
    return item;
  }

  private static String capital(String words) {
    return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
  }

  private static String reason(ThingKind kind) {
    return switch (kind) {
      case WELL -> "A pumping well: where the oil and the water come from";
      case TEE -> "Where flow lines meet. Let go on a line, it cuts the line in two";
      case SEPARATOR -> "Splits oil from water under the regulator's back pressure";
      case GUN_BARREL -> "Splits oil from water by weight alone: no valves, no regulator";
      case OIL_TANK -> "A stock tank: its height is what the oil leg must lift to";
      case WATER_TANK -> "Takes the water leg, and feeds the injection pump";
      case INJECTION_PUMP -> "Puts the water away; set by the well's pressure while it runs";
      case INJECTION_WELL -> "Where the water goes, at no more than its permit";
      case POWER_POLE -> "Where the power comes from: the nearest one feeds each motor";
      case BERM -> "The wall round the tanks: holds the largest of them and the rain";
      case LANDMARK -> "A house, creek or road to keep away from, by the local setback";
    };
  }

  private void toggle() {
    if (hand.inHand() == what) {
      hand.putAway();
    } else {
      hand.take(what);
    }
    setSelected(hand.inHand() == what);
  }

  private void press(MouseEvent e) {
    pressed = e.getButton() == MouseButton.PRIMARY ? e : null;
    carrying = false;
  }

  private void drag(MouseEvent e) {
    if (pressed == null || what.thing().isEmpty()) {
      return;
    }
    double away =
        Math.hypot(e.getSceneX() - pressed.getSceneX(), e.getSceneY() - pressed.getSceneY());
    if (!carrying && away >= DRAG_PX) {
      carrying = true;
      hand.take(what);
    }
    if (carrying) {
      hand.carryTo(e.getSceneX(), e.getSceneY());
      e.consume();
    }
  }

  private void release(MouseEvent e) {
    if (carrying) {
      carrying = false;
      disarm();
      hand.drop(e.getSceneX(), e.getSceneY());
      e.consume();
    }
    pressed = null;
  }

  private void key(KeyEvent e) {
    if (e.getCode() == KeyCode.ENTER) {
      fire();
      e.consume();
    } else if (e.getCode() == KeyCode.ESCAPE && carrying) {
      carrying = false;
      pressed = null;
      hand.giveUp();
      e.consume();
    }
  }

  /** Draws on a picture in the ink of the shade. */
  private interface Drawing {
    void draw(GraphicsContext g, Inks inks);
  }

  private static Canvas picture(Look look, Drawing drawing) {
    Canvas canvas = new Canvas(PICTURE_PX, PICTURE_PX);
    Runnable draw =
        () -> {
          GraphicsContext g = canvas.getGraphicsContext2D();
          g.clearRect(0, 0, PICTURE_PX, PICTURE_PX);
          drawing.draw(g, Inks.of(look.shade()));
        };
    look.shadeProperty().addListener((o, before, after) -> draw.run());
    draw.run();
    return canvas;
  }

  private static void symbol(GraphicsContext g, Inks inks, ThingKind kind) {
    double width =
        switch (kind) {
          case WELL, POWER_POLE, LANDMARK -> 15;
          case TEE -> 12;
          case SEPARATOR -> 25;
          case GUN_BARREL, OIL_TANK, WATER_TANK, BERM -> 22;
          case INJECTION_PUMP, INJECTION_WELL -> 18;
        };
    double height = kind == ThingKind.SEPARATOR ? 13 : width;
    new Symbols(g, inks).draw(kind, PICTURE_PX / 2, PICTURE_PX / 2, width, height, Status.NEW);
  }

  private static void pen(GraphicsContext g, Inks inks) {
    g.setStroke(inks.of(Service.FLOW_LINE));
    g.setFill(inks.of(Service.FLOW_LINE));
    g.setLineWidth(2);
    double[] xs = {4, 11, 16, 22};
    double[] ys = {20, 20, 8, 8};
    g.strokePolyline(xs, ys, 4);
    g.fillOval(1, 17, 6, 6);
    g.fillOval(19, 5, 6, 6);
  }
}
