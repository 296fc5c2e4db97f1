package tankyard.engine.study;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.List;
import java.util.Optional;
import tankyard.engine.lease.DesignCase;

/** Everything worked out for one design case, in the order of the lease. */
@RecordBuilder
public record CaseResult(
    DesignCase designCase,
    List<LineResult> lines,
    List<WellResult> wells,
    List<SeparatorResult> separators,
    List<GunBarrelResult> gunBarrels,
    StorageResult storage,
    List<OverflowResult> overflows,
    List<SwitchResult> switches,
    List<BreathingResult> breathing,
    List<InjectionResult> injections,
    List<SharedWell> sharedWells,
    List<SuctionResult> suctions,
    List<SharedLine> shared,
    Optional<TreaterResult> treater,
    List<CaseCaution> cautions,
    List<NetworkAudit> audits)
    implements CaseResultBuilder.With {
  public CaseResult {
    lines = List.copyOf(lines);
    wells = List.copyOf(wells);
    separators = List.copyOf(separators);
    gunBarrels = List.copyOf(gunBarrels);
    overflows = List.copyOf(overflows);
    switches = List.copyOf(switches);
    breathing = List.copyOf(breathing);
    injections = List.copyOf(injections);
    sharedWells = List.copyOf(sharedWells);
    suctions = List.copyOf(suctions);
    shared = List.copyOf(shared);
    cautions = List.copyOf(cautions);
    audits = List.copyOf(audits);
  }

  public Optional<LineResult> line(String id) {
    return lines.stream().filter(l -> l.lineId().equals(id)).findFirst();
  }

  public Optional<SharedLine> shared(String lineId) {
    return shared.stream().filter(l -> l.lineId().equals(lineId)).findFirst();
  }

  public Optional<WellResult> well(String id) {
    return wells.stream().filter(w -> w.wellId().equals(id)).findFirst();
  }

  public Optional<SeparatorResult> separator(String id) {
    return separators.stream().filter(s -> s.separatorId().equals(id)).findFirst();
  }

  public Optional<GunBarrelResult> gunBarrel(String id) {
    return gunBarrels.stream().filter(g -> g.gunBarrelId().equals(id)).findFirst();
  }
}
