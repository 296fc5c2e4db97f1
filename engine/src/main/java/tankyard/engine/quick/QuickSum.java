package tankyard.engine.quick;

import java.util.List;

/**
 * One calculation a field hand wants without drawing a lease. It declares what it takes, so that a
 * command line and a window can both ask for it, and answers with workings.
 */
public interface QuickSum {
  /** Short and stable, words joined by hyphens: {@code pipe-loss}. */
  String id();

  /** What it answers, as a heading. */
  String title();

  /** One or two sentences: the law, and what is left out. */
  String about();

  /** What it takes, in the order it is asked. */
  List<QuickInput> inputs();

  /**
   * The answer.
   *
   * @param in every needed input is there
   * @throws QuickInputException where inputs don't go together
   */
  QuickResult compute(QuickValues in);
}
