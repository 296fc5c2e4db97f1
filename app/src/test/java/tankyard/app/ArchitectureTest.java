package tankyard.app;

import static com.tngtech.archunit.base.DescribedPredicate.not;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;

@AnalyzeClasses(packages = "tankyard.app", importOptions = ImportOption.DoNotIncludeTests.class)
class ArchitectureTest {
  private static final String[] FEATURES = {
    "map",
    "rack",
    "sheet",
    "findings",
    "profile",
    "pressure",
    "tanks",
    "pumps",
    "ahead",
    "takeoff",
    "sums",
    "files",
    "welcome",
    "shell"
  };

  @ArchTest
  static final ArchRule packages_have_no_cycles =
      slices().matching("tankyard.app.(**)").should().beFreeOfCycles();

  /** They meet in the store, the selection, the hand and the results. */
  @ArchTest
  static final ArchRule features_never_know_each_other =
      slices()
          .matching("tankyard.app.(*)..")
          .namingSlices("$1")
          .that(
              com.tngtech.archunit.base.DescribedPredicate.describe(
                  "are features",
                  slice -> java.util.List.of(FEATURES).contains(slice.getNamePart(1))))
          .should()
          .notDependOnEachOther();

  /** So that everything but painting has plain tests. */
  @ArchTest
  static final ArchRule view_models_and_the_core_see_no_scene =
      noClasses()
          .that()
          .haveSimpleNameEndingWith("ViewModel")
          .or()
          .resideInAnyPackage(
              "tankyard.app.edit..",
              "tankyard.app.solve..",
              "tankyard.app.map.plan..",
              "tankyard.app.map.tools..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("javafx.scene..", "javafx.stage..");

  /** The laws stay behind the engine's door; what it prints comes from its reports. */
  @ArchTest
  static final ArchRule only_the_engines_door_document_and_results_are_used =
      noClasses()
          .that()
          .resideInAPackage("tankyard.app..")
          .should()
          .dependOnClassesThat(
              resideInAnyPackage("tankyard.engine..")
                  .and(
                      not(
                          resideInAnyPackage(
                              "tankyard.engine.api..",
                              "tankyard.engine.lease..",
                              "tankyard.engine.leasefile..",
                              "tankyard.engine.catalog..",
                              "tankyard.engine.units..",
                              "tankyard.engine.working..",
                              "tankyard.engine.study..",
                              "tankyard.engine.window..",
                              "tankyard.engine.outlook..",
                              "tankyard.engine.checks..",
                              "tankyard.engine.cures..",
                              "tankyard.engine.takeoff..",
                              "tankyard.engine.pricing..",
                              "tankyard.engine.terrain..",
                              "tankyard.engine.quick..",
                              "tankyard.engine.report..",
                              "tankyard.engine.cli.."))));

  /** Only App, Studio and Panels wire; nothing reaches back up. */
  @ArchTest
  static final ArchRule nothing_knows_the_wiring =
      noClasses()
          .that()
          .resideOutsideOfPackage("tankyard.app")
          .should()
          .dependOnClassesThat()
          .resideInAPackage("tankyard.app");
}
