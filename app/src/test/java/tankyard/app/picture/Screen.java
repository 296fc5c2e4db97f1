package tankyard.app.picture;

/**
 * The screen a picture is taken on. On a screen set to 125 % the window has fewer places of its own
 * to lay things out on, and each of them is drawn larger.
 *
 * @param width in the window's own pixels
 * @param height in the window's own pixels
 * @param scale how many pixels of the picture one of the window's is wide
 */
record Screen(String name, int width, int height, double scale) {
  static final Screen USUAL = new Screen("", 1440, 900, 1);
  static final Screen LARGER = new Screen("-125", 1152, 720, 1.25);
  static final Screen SMALL = new Screen("-small", 1100, 700, 1);
}
