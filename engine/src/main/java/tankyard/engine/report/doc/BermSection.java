package tankyard.engine.report.doc;

import java.util.List;
import tankyard.engine.study.BermResult;
import tankyard.engine.units.Rounding;

/** How high the berm must be. */
final class BermSection {
  private BermSection() {}

  static List<Section> of(Draft draft) {
    return draft.results().yard().berms().stream().map(b -> section(draft, b)).toList();
  }

  private static Section section(Draft draft, BermResult berm) {
    String name = draft.nameOf(berm.bermId());
    boolean rain = berm.countsRain(draft.results().lease());
    Draft.Shown needed =
        draft.headline(name + ": height needed", Figure.HEIGHT, Rounding.UP, berm.needed());
    String built =
        berm.built()
            .map(
                b ->
                    " It is drawn "
                        + draft.words(Figure.HEIGHT, b)
                        + " high, which is "
                        + (b.metres() >= berm.needed().value().metres() ? "enough." : "too low."))
            .orElse(
                " No height is drawn: build it to "
                    + draft.words(Figure.HEIGHT, berm.toBuild())
                    + " after it has settled.");
    Draft.Shown dirt = draft.headline(name + ": dirt in it", Figure.DIRT, Rounding.UP, berm.dirt());
    return Section.of(
        name,
        new Block.Words(
            draft.words(Figure.GROUND, berm.inside())
                + " lie inside. To hold "
                + draft.nameOf(berm.largestTankId())
                + ", the largest tank in it, "
                + (rain ? "and the rain" : "and no rain, since none is typed")
                + ", its walls must stand "
                + needed.words()
                + " above the pad."
                + built
                + " "
                + dirt.words()
                + " of dirt lie in it, settled."
                + " The local code governs; count on settling."));
  }
}
