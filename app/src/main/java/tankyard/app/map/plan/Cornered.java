package tankyard.app.map.plan;

/** What is drawn from corner to corner, and can be bent: a line, or an outline on the ground. */
public sealed interface Cornered permits PlanLine, PlanOutline {
  String id();

  /** How many can be dragged; the ends of a line belong to its things. */
  int corners();

  MapSpot corner(int index);

  /** The spot that a corner hangs on, which stays while it is dragged. */
  MapSpot before(int corner);

  int legs();

  MapSpot legStart(int leg);

  MapSpot legEnd(int leg);

  /** Which position a corner put on a leg takes among the corners. */
  int cornerOn(int leg);
}
