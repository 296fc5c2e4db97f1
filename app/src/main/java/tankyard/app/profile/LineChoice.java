package tankyard.app.profile;

/** A line to be chosen, with its words. */
record LineChoice(String lineId, String words) {
  @Override
  public String toString() {
    return words;
  }
}
