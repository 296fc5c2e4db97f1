package tankyard.engine.architecture;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.library.Architectures;
import com.tngtech.archunit.library.GeneralCodingRules;

/** The arrows between the engine's packages, as docs/decisions/0001-architecture.md draws them. */
@AnalyzeClasses(packages = "tankyard.engine", importOptions = ImportOption.DoNotIncludeTests.class)
class EngineArchitectureTest {

  @ArchTest
  static final ArchRule NO_PACKAGE_IS_IN_A_CYCLE =
      slices().matching("tankyard.engine.(**)").should().beFreeOfCycles();

  @ArchTest
  static final ArchRule THE_ENGINE_KNOWS_NO_SCREEN =
      noClasses()
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("javafx..", "tankyard.app..", "tankyard.catalogdemo..");

  @ArchTest
  static final ArchRule ARROWS_POINT_DOWN =
      Architectures.layeredArchitecture()
          .consideringOnlyDependenciesInLayers()
          .layer("ground")
          .definedBy(
              "tankyard.engine.units..", "tankyard.engine.working..", "tankyard.engine.numeric..")
          .layer("matter")
          .definedBy("tankyard.engine.fluids..", "tankyard.engine.terrain..")
          .layer("physics")
          .definedBy(
              "tankyard.engine.pipes..",
              "tankyard.engine.valves..",
              "tankyard.engine.wells..",
              "tankyard.engine.pumps..",
              "tankyard.engine.vessels..",
              "tankyard.engine.tanks..")
          .layer("document")
          .definedBy(
              "tankyard.engine.lease..", "tankyard.engine.leasefile..", "tankyard.engine.catalog..")
          .layer("network")
          .definedBy("tankyard.engine.network..")
          .layer("study")
          .definedBy("tankyard.engine.study..")
          .layer("answers")
          .definedBy(
              "tankyard.engine.window..",
              "tankyard.engine.outlook..",
              "tankyard.engine.checks..",
              "tankyard.engine.cures..",
              "tankyard.engine.takeoff..",
              "tankyard.engine.pricing..")
          .layer("quick sums")
          .definedBy("tankyard.engine.quick..")
          .layer("out")
          .definedBy("tankyard.engine.api..", "tankyard.engine.report..", "tankyard.engine.cli..")
          .whereLayer("out")
          .mayNotBeAccessedByAnyLayer()
          .whereLayer("answers")
          .mayOnlyBeAccessedByLayers("out")
          .whereLayer("study")
          .mayOnlyBeAccessedByLayers("answers", "out")
          .whereLayer("network")
          .mayOnlyBeAccessedByLayers("study", "answers", "out")
          .whereLayer("document")
          .mayOnlyBeAccessedByLayers("study", "answers", "out")
          .whereLayer("physics")
          .mayOnlyBeAccessedByLayers("network", "study", "answers", "quick sums", "out")
          .whereLayer("quick sums")
          .mayOnlyBeAccessedByLayers("out")
          .because("laws know no lease, the lease knows no laws, and only the study joins them");

  @ArchTest
  static final ArchRule LAWS_DO_NOT_KNOW_EACH_OTHER =
      slices()
          .matching("tankyard.engine.(pipes|valves|wells|pumps|vessels|tanks)..")
          .should()
          .notDependOnEachOther();

  @ArchTest
  static final ArchRule ONLY_THE_COMMAND_LINE_PRINTS =
      noClasses()
          .that()
          .resideOutsideOfPackage("tankyard.engine.cli..")
          .should(GeneralCodingRules.ACCESS_STANDARD_STREAMS)
          .because("a result is returned, not printed");
}
