package tankyard.engine.study;

import java.util.ArrayList;
import java.util.List;
import tankyard.engine.fluids.Liquid;
import tankyard.engine.lease.Tank;
import tankyard.engine.pipes.RunLoss;
import tankyard.engine.units.Figures;
import tankyard.engine.units.Length;
import tankyard.engine.units.Unit;
import tankyard.engine.working.Computed;
import tankyard.engine.working.Source;
import tankyard.engine.working.Term;
import tankyard.engine.working.Working;

/**
 * How high a line that nothing pushes backs up at its start: its end, or a crest on the way, and
 * the loss up to there. No siphon is counted on.
 *
 * @param bottomM elevation of the gun barrel's bottom
 * @param from the weir or the oil outlet, above that bottom
 */
record GunBarrelFalls(LegRun run, double bottomM, Length from) {
  private static final Source SOURCE =
      Source.definition("a line open to the air at both ends: height and line loss");

  /** What the line must get over. */
  private record Governor(String name, double elevationM, double frictionPa) {
    double levelM(Liquid liquid) {
      return elevationM + frictionPa / liquid.staticPascals(1);
    }
  }

  GunBarrelFall fall() {
    Governor governor = governor();
    double heightM = governor.elevationM() - bottomM;
    Computed<Length> loss = loss(governor);
    Computed<Length> stands = stands(governor, heightM, loss);
    return new GunBarrelFall(
        run.runs().get(0).laid().id(),
        run.runs().get(0).laid().line().service(),
        CaseStudy.barrels(run.rate()),
        governor.name(),
        loss,
        stands,
        spare(stands));
  }

  private Governor governor() {
    boolean top = run.tank().entry() == Tank.Entry.TOP;
    String end = run.tank().name() + (top ? "'s inlet" : " full to its overflow");
    Governor worst = new Governor(end, run.endM(), run.wholeFrictionPa());
    for (LegRun.HighPoint high : run.highPoints()) {
      Governor crest =
          new Governor(
              "the crest " + Figures.grouped(Math.rint(high.along().toFeet())) + " ft out",
              high.elevationM(),
              high.frictionPa());
      worst = crest.levelM(liquid()) > worst.levelM(liquid()) ? crest : worst;
    }
    return worst;
  }

  private Liquid liquid() {
    return run.liquid().liquid();
  }

  private Computed<Length> loss(Governor governor) {
    return GunBarrelLegs.head(
        governor.frictionPa(), liquid(), "Head lost on the way", SOURCE, this::frictions);
  }

  private List<Working> frictions() {
    List<Working> found = new ArrayList<>();
    for (LineRun line : run.runs()) {
      line.laid().law().runs().stream()
          .map(r -> new RunLoss(r, liquid(), line.flow()).friction().working())
          .forEach(found::add);
    }
    return found;
  }

  private Computed<Length> stands(Governor governor, double heightM, Computed<Length> loss) {
    return Computed.of(
        feet(heightM + loss.value().metres()),
        () ->
            Working.of(
                    "Height it backs up to",
                    "hs",
                    "ht+hl",
                    Unit.FOOT,
                    SOURCE,
                    Term.of("ht", governor.name(), Unit.FOOT.fromSi(heightM), Unit.FOOT),
                    Term.of("hl", "lost on the way", loss.value(), Unit.FOOT))
                .from(List.of(loss.working())));
  }

  private Computed<Length> spare(Computed<Length> stands) {
    return Computed.of(
        feet(from.metres() - stands.value().metres()),
        () ->
            Working.of(
                    "Height to spare",
                    "hx",
                    "hf-hs",
                    Unit.FOOT,
                    SOURCE,
                    Term.of("hf", "where it starts from", from, Unit.FOOT),
                    Term.of("hs", "height it backs up to", stands.value(), Unit.FOOT))
                .from(List.of(stands.working())));
  }

  private static Length feet(double metres) {
    return Length.ofFeet(Unit.FOOT.fromSi(metres));
  }
}
