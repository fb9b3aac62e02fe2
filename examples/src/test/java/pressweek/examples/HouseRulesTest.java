package pressweek.examples;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.GeneralCodingRules.ACCESS_STANDARD_STREAMS;
import static com.tngtech.archunit.library.GeneralCodingRules.THROW_GENERIC_EXCEPTIONS;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaCall;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaField;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.core.importer.ImportOption.DoNotIncludeTests;
import com.tngtech.archunit.core.importer.Location;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import java.time.Clock;
import java.util.Date;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.OptionalLong;
import java.util.Set;
import java.util.function.Predicate;
import org.jspecify.annotations.NullMarked;

/** The rules of the house about who may use what, checked on the compiled classes. */
@AnalyzeClasses(
    packages = "pressweek",
    importOptions = {DoNotIncludeTests.class, HouseRulesTest.NoTestJars.class})
class HouseRulesTest {
  /** Leaves out the jars in which modules share their test fixtures. */
  static final class NoTestJars implements ImportOption {
    @Override
    public boolean includes(Location location) {
      return !location.contains("-tests.jar");
    }
  }

  private static final Set<String> OPTIONALS =
      Set.of(
          Optional.class.getName(),
          OptionalInt.class.getName(),
          OptionalLong.class.getName(),
          OptionalDouble.class.getName());

  /** Else the other rules would hold only because they saw no classes. */
  @ArchTest
  static void everySourceIsAmongTheClassesThatAreChecked(JavaClasses classes) {
    Set<String> written = HouseSourcesTest.written();
    assertThat(written).isNotEmpty();
    assertThat(classes.stream().map(JavaClass::getName)).containsAll(written);
  }

  @ArchTest
  static final ArchRule dataUsesNoneOfOurs =
      noClasses()
          .that()
          .resideInAPackage("pressweek.data..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("pressweek.solver..", "pressweek.reports..", "pressweek.app..");

  @ArchTest
  static final ArchRule solverUsesDataOnly =
      noClasses()
          .that()
          .resideInAPackage("pressweek.solver..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("pressweek.reports..", "pressweek.app..");

  @ArchTest
  static final ArchRule reportsUseDataOnly =
      noClasses()
          .that()
          .resideInAPackage("pressweek.reports..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("pressweek.solver..", "pressweek.app..");

  @ArchTest
  static final ArchRule packagesHaveNoCycles =
      slices().matching("pressweek.(**)").should().beFreeOfCycles();

  @ArchTest
  static final ArchRule problemUsesNoOtherDataPackage =
      noClasses()
          .that()
          .resideInAPackage("pressweek.data.problem..")
          .should()
          .dependOnClassesThat(
              describe(
                  "are in another package of data",
                  type ->
                      type.getPackageName().startsWith("pressweek.data")
                          && !type.getPackageName().startsWith("pressweek.data.problem")));

  @ArchTest
  static final ArchRule timefoldOnlyInSolver =
      noClasses()
          .that()
          .resideOutsideOfPackage("pressweek.solver..")
          .should()
          .dependOnClassesThat()
          .resideInAPackage("ai.timefold..");

  @ArchTest
  static final ArchRule auditSharesNothingWithTheSearch =
      noClasses()
          .that()
          .resideInAPackage("pressweek.solver.audit..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage(
              "ai.timefold..",
              "pressweek.solver.model..",
              "pressweek.solver.timing..",
              "pressweek.solver.rules..");

  @ArchTest
  static final ArchRule searchIsSeenBySolverOnly =
      noClasses()
          .that()
          .resideOutsideOfPackage("pressweek.solver..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage(
              "pressweek.solver.model..", "pressweek.solver.timing..", "pressweek.solver.rules..");

  @ArchTest
  static final ArchRule commandLineKnowsNoWeb =
      noClasses()
          .that()
          .resideInAPackage("pressweek.app.cli..")
          .should()
          .dependOnClassesThat()
          .resideInAPackage("pressweek.app.web..");

  @ArchTest
  static final ArchRule picocliOnlyInCommandLine =
      noClasses()
          .that()
          .resideOutsideOfPackage("pressweek.app.cli..")
          .should()
          .dependOnClassesThat()
          .resideInAPackage("picocli..");

  @ArchTest
  static final ArchRule fileFormatsOnlyAtTheEdges =
      noClasses()
          .that()
          .resideOutsideOfPackages(
              "pressweek.data.files..", "pressweek.reports.write..", "pressweek.app..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage(
              "com.fasterxml.jackson..", "org.apache.commons.csv..", "org.dhatim.fastexcel..");

  @ArchTest
  static final ArchRule barCodesAreDrawnWithTheLabels =
      noClasses()
          .that()
          .resideOutsideOfPackage("pressweek.reports.labels..")
          .should()
          .dependOnClassesThat()
          .resideInAPackage("com.google.zxing..");

  @ArchTest
  static final ArchRule problemAndPlanHoldValuesOnly =
      classes()
          .that()
          .resideInAnyPackage("pressweek.data.problem..", "pressweek.data.plan..")
          .should(be("records, enums or interfaces", HouseRulesTest::isValue));

  @ArchTest
  static final ArchRule onlyTheCommandLinePrints =
      noClasses()
          .that()
          .resideOutsideOfPackage("pressweek.app.cli..")
          .should(ACCESS_STANDARD_STREAMS);

  @ArchTest
  static final ArchRule noGenericExceptions = noClasses().should(THROW_GENERIC_EXCEPTIONS);

  @ArchTest
  static final ArchRule onlyTheAppAsksTheClock =
      noClasses()
          .that()
          .resideOutsideOfPackage("pressweek.app..")
          // Benchmarks say on what day they were run.
          .and()
          .doNotHaveSimpleName("Benchmarks")
          .and()
          .doNotHaveSimpleName("ResultsFile")
          .should()
          .callCodeUnitWhere(describe("the clock is read", HouseRulesTest::readsTheClock));

  @ArchTest
  static final ArchRule optionalIsForAnswersNotForFields =
      fields()
          .that()
          .areDeclaredInClassesThat(describe("are no records", type -> !type.isRecord()))
          .should(
              new ArchCondition<JavaField>("not be optional") {
                @Override
                public void check(JavaField field, ConditionEvents events) {
                  boolean kept = !OPTIONALS.contains(field.getRawType().getName());
                  events.add(new SimpleConditionEvent(field, kept, field.getDescription()));
                }
              });

  @ArchTest
  static final ArchRule everyPackageIsNullMarked =
      classes().should(be("in a null-marked package", HouseRulesTest::isInNullMarkedPackage));

  @ArchTest
  static final ArchRule packagesAreNamedByTheTrade =
      noClasses()
          .should()
          .resideInAnyPackage(
              "..util..", "..utils..", "..common..", "..impl..", "..manager..", "..service..");

  @ArchTest
  static final ArchRule noInterfaceForOneClass =
      classes()
          .that()
          .areInterfaces()
          .should(be("implemented by none or several classes", HouseRulesTest::isWorthwhile));

  private static ArchCondition<JavaClass> be(String what, Predicate<JavaClass> holds) {
    return new ArchCondition<>("be " + what) {
      @Override
      public void check(JavaClass type, ConditionEvents events) {
        events.add(new SimpleConditionEvent(type, holds.test(type), type.getDescription()));
      }
    };
  }

  /**
   * The body of an enum constant is a class of its own whose parent is the enum; a switch over an
   * enum may leave a synthetic one.
   */
  private static boolean isValue(JavaClass type) {
    boolean constantBody = type.getRawSuperclass().filter(JavaClass::isEnum).isPresent();
    boolean synthetic = type.getModifiers().contains(JavaModifier.SYNTHETIC);
    return type.isRecord() || type.isEnum() || type.isInterface() || constantBody || synthetic;
  }

  private static boolean readsTheClock(JavaCall<?> call) {
    JavaClass owner = call.getTargetOwner();
    String name = call.getName();
    boolean now = owner.getPackageName().startsWith("java.time") && name.equals("now");
    boolean clock = owner.isEquivalentTo(Clock.class) && !name.equals("fixed");
    boolean millis = owner.isEquivalentTo(System.class) && name.equals("currentTimeMillis");
    boolean date = owner.isEquivalentTo(Date.class) && name.equals("<init>");
    return now || clock || millis || date;
  }

  private static boolean isInNullMarkedPackage(JavaClass type) {
    return type.getPackage().isAnnotatedWith(NullMarked.class);
  }

  /** An interface with one method may have lambdas behind it, which leave no class to count. */
  private static boolean isWorthwhile(JavaClass type) {
    long open =
        type.getMethods().stream()
            .filter(method -> method.getModifiers().contains(JavaModifier.ABSTRACT))
            .count();
    long classes = type.getAllSubclasses().stream().filter(sub -> !sub.isInterface()).count();
    return type.isAnnotation() || open == 1 || classes != 1;
  }
}
