package io.github.swatchwright.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.swatchwright.coat.Coat;
import io.github.swatchwright.coat.Wait;
import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.difference.Ciede2000;
import io.github.swatchwright.estimate.ShelfOptics;
import io.github.swatchwright.json.ShelfJson;
import io.github.swatchwright.mix.Mix;
import io.github.swatchwright.paint.Bottle;
import io.github.swatchwright.paint.Finish;
import io.github.swatchwright.paint.Medium;
import io.github.swatchwright.paint.Paint;
import io.github.swatchwright.paint.Shelf;
import io.github.swatchwright.paint.Swatch;
import io.github.swatchwright.spectrum.TristimulusWeights;
import io.github.swatchwright.testdata.DemoShelf;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;

class PlannerTest {
  private static final Shelf SHELF = ShelfJson.parse(DemoShelf.text(), DemoShelf.SOURCE);
  private static final Planner PLANNER =
      Planner.of(ShelfOptics.estimate(SHELF), TristimulusWeights.D65);
  private static final Planner EVERY_MEDIUM =
      Planner.of(ShelfOptics.estimate(RandomProjects.SHELF), TristimulusWeights.D65);
  private static final Plan DREDGER = PLANNER.plan(PlanStatistics.PROJECT);

  private static Project project(double size, Task... tasks) {
    return Project.of(
        "A dredger",
        List.of(new ProjectArea("Hull", size, ProjectArea.BARE_PLASTIC, List.of(tasks))));
  }

  private static Task task(StepKind kind, String mix) {
    return Task.of(kind, new Aim.OfMix(Mix.parse(mix, SHELF)));
  }

  private static Task any(StepKind kind, String paint) {
    return Task.of(kind, new Aim.OfMix(Mix.of(RandomProjects.SHELF.paint(paint))));
  }

  private static List<StepKind> kinds(Plan plan) {
    return plan.steps().stream().map(PlanStep::kind).toList();
  }

  @Test
  void theDredgersHullIsSealedOverItsChipsAndUnderTheOilWash() {
    List<PlanStep> hull = DREDGER.stepsOf("Hull");

    assertThat(hull.stream().map(PlanStep::kind))
        .containsExactly(
            StepKind.BASE,
            StepKind.CHIPPING_MEDIUM,
            StepKind.WHITEWASH,
            StepKind.SEAL,
            StepKind.FILTER,
            StepKind.SEAL,
            StepKind.WASH,
            StepKind.VARNISH);
    assertThat(hull.get(3).advice().get(0)).contains("chips").contains("water");
    assertThat(hull.get(5).advice().get(0))
        .contains("Harbour-dirt wash (oil) goes over Blue filter (enamel)")
        .contains("lifts enamel");
    assertThat(hull.get(2).advice().toString()).contains("15 %").contains("damp stiff brush");
  }

  @Test
  void numbersFollowTheOrderOfWorkAndEachCoatHasItsTime() {
    for (int i = 0; i < DREDGER.steps().size(); i++) {
      assertThat(DREDGER.steps().get(i).number()).isEqualTo(i + 1);
    }
    for (PlanStep step : DREDGER.steps()) {
      assertThat(
              DREDGER.calendar().stream()
                  .filter(sitting -> sitting.step() == step.number())
                  .mapToInt(sitting -> sitting.lastCoat() - sitting.firstCoat() + 1)
                  .sum())
          .isEqualTo(step.work().passes());
    }
  }

  private static int minute(Sitting sitting) {
    return sitting.day() * 24 * 60 + sitting.startMinute();
  }

  @Test
  void nothingIsPaintedBeforeWhatIsBelowHasDriedForTheUsualTime() {
    for (ProjectArea area : PlanStatistics.PROJECT.areas()) {
      List<PlanStep> steps = DREDGER.stepsOf(area.name());
      for (int i = 1; i < steps.size(); i++) {
        int lower = steps.get(i - 1).number();
        int upper = steps.get(i).number();
        int last =
            DREDGER.calendar().stream()
                .filter(sitting -> sitting.step() == lower)
                .mapToInt(PlannerTest::minute)
                .max()
                .orElseThrow();
        int next =
            DREDGER.calendar().stream()
                .filter(sitting -> sitting.step() == upper)
                .mapToInt(PlannerTest::minute)
                .min()
                .orElseThrow();
        double hours =
            steps.get(i - 1).kind() == StepKind.CHIPPING_MEDIUM
                ? 1
                : Wait.after(steps.get(i - 1).medium().orElseThrow()).leastHours();
        assertThat(next - last).as("%s before %s", lower, upper).isGreaterThan((int) (60 * hours));
      }
    }
  }

  @Test
  void workIsAtBenchHoursAndOneThingAtATime() {
    int before = -1;
    for (Sitting sitting : DREDGER.calendar()) {
      assertThat(minute(sitting)).isGreaterThan(before);
      before = minute(sitting);
      boolean weekend = sitting.day() % 7 < 2; // A Saturday is day 0.
      assertThat(sitting.part()).as("%s", sitting).matches(p -> weekend || p == DayPart.EVENING);
      assertThat(sitting.startMinute())
          .isBetween(sitting.part().fromMinute(), sitting.part().untilMinute());
    }
  }

  @Test
  void theCalendarNamesDaysOfTheWeekOrDates() {
    assertThat(PlanCalendar.of(DREDGER).get(0).when()).isEqualTo("Saturday morning");
    assertThat(PlanCalendar.of(DREDGER).get(0).what().get(0)).isEqualTo("09:00  1 Hull, base coat");
    Project dated =
        project(50, task(StepKind.BASE, "Hull black")).withStarts(LocalDate.of(2026, 12, 7));

    assertThat(PlanCalendar.of(PLANNER.plan(dated)).get(0).when())
        .isEqualTo("Monday 7 December, evening");
  }

  // Worked by hand: 420 cm² · 10 µm ÷ 30 % ÷ 35 % = 4.0 ml a coat; two coats 1:1 take 4 ml each.
  @Test
  void amountsAreTheWorkedFigures() {
    Plan plan = PLANNER.plan(project(420, task(StepKind.BASE, "Dredger grey").withCoats(2)));

    assertThat(plan.steps().get(0).work().amount().paintMillilitres()).isCloseTo(4, within(1e-9));
    assertThat(plan.needs().thinners().get("acrylic thinner")).isCloseTo(4, within(1e-9));
    Needs.OfPaint grey = plan.needs().paints().get(0);
    assertThat(grey.drops()).isEqualTo(89); // 4 ml ÷ 0.045 ml = 88.9
    assertThat(grey.millilitres()).isCloseTo(89 * 0.045, within(1e-9));
    assertThat(plan.needs().missing()).isEmpty();
  }

  @Test
  void bottlesThatRunShortAndWhatIsNotOnTheShelfAreNamed() {
    List<Paint> paints = new ArrayList<>(SHELF.paints());
    paints.replaceAll(
        paint ->
            paint.name().equals("Dredger grey")
                ? paint.withBottle(new Bottle(OptionalDouble.of(1), OptionalDouble.empty()))
                : paint);
    Shelf nearlyEmpty = Shelf.of("Nearly empty", paints);
    Task grey = Task.of(StepKind.BASE, new Aim.OfMix(Mix.of(nearlyEmpty.paint("Dredger grey"))));
    Task white = task(StepKind.WHITEWASH, "Titanium white").withWorn(0.1);

    Plan plan =
        Planner.of(ShelfOptics.estimate(nearlyEmpty), TristimulusWeights.D65)
            .plan(project(420, grey.withCoats(2), white));

    assertThat(plan.needs().missing().stream().map(Needs.OfPaint::name))
        .containsExactly("Dredger grey", "chipping medium");
    assertThat(plan.needs().missing().get(0).missingMillilitres())
        .isCloseTo(89 * 0.045 - 1, within(1e-9));
    assertThat(plan.needs().missing().get(1).owned()).isFalse();
  }

  @Test
  void aPrimerGoesFirstWhereverItWasAskedFor() {
    Plan plan =
        PLANNER.plan(
            project(
                50, task(StepKind.BASE, "Dredger grey"), task(StepKind.PRIMER, "Titanium white")));

    assertThat(kinds(plan)).containsExactly(StepKind.PRIMER, StepKind.BASE);
    assertThat(plan.steps().get(0).advice().get(0)).startsWith("Moved to the front");
    assertThat(plan.steps().get(0).task()).hasValue(1);
    assertThat(plan.withoutPrimer()).isEmpty();
    assertThat(DREDGER.withoutPrimer()).hasSize(3);
  }

  @Test
  void whatNoVarnishHoldsOffGoesBelowWhatItWouldLift() {
    Plan plan =
        EVERY_MEDIUM.plan(
            project(
                50,
                any(StepKind.BASE, "lacquer paint"),
                any(StepKind.WASH, "oil wash"),
                any(StepKind.FILTER, "lacquer wash")));

    assertThat(kinds(plan)).containsExactly(StepKind.BASE, StepKind.FILTER, StepKind.WASH);
    assertThat(plan.steps().get(1).advice().get(0)).startsWith("Moved below the wash");
  }

  @Test
  void aBaseThatCannotBeSavedIsRefusedWithTheReason() {
    Project lifts =
        project(50, any(StepKind.BASE, "enamel paint"), any(StepKind.FILTER, "lacquer wash"));

    assertThatThrownBy(() -> EVERY_MEDIUM.plan(lifts))
        .hasMessage(
            "Hull, step 2 (filter): 'lacquer wash', which is lacquer, goes over 'enamel paint'"
                + " (enamel): lacquer thinner wrinkles and lifts enamel, and no varnish holds it"
                + " off; take another medium for one of them");
  }

  @Test
  void chipsGetTheirMediumAndAnEnamelIsRubbedOffWithItsThinner() {
    Task acrylic = task(StepKind.WHITEWASH, "Titanium white").withWorn(0.2);
    Task enamel = task(StepKind.WHITEWASH, "Enamel off-white").withWorn(0.2);
    Task base = task(StepKind.BASE, "Dredger grey");

    assertThat(kinds(PLANNER.plan(project(50, base, acrylic))))
        .containsExactly(
            StepKind.BASE, StepKind.CHIPPING_MEDIUM, StepKind.WHITEWASH, StepKind.SEAL);
    Plan rubbed = PLANNER.plan(project(50, base, enamel));
    assertThat(kinds(rubbed)).containsExactly(StepKind.BASE, StepKind.WHITEWASH);
    assertThat(rubbed.steps().get(1).advice().toString()).contains("white spirit");
  }

  @Test
  void chippingMediumThatCannotWorkIsRefused() {
    Task medium = Task.of(StepKind.CHIPPING_MEDIUM, new Aim.Usual());
    Task base = task(StepKind.BASE, "Dredger grey");
    Task white = task(StepKind.WHITEWASH, "Titanium white");

    assertThatThrownBy(() -> PLANNER.plan(project(50, base, medium, white)))
        .hasMessageContaining("say how much is worn off");
    assertThatThrownBy(
            () -> PLANNER.plan(project(50, base, medium, white.withWorn(0.1).withThinner(5))))
        .hasMessageContaining("floods the chipping medium");
    assertThatThrownBy(
            () ->
                PLANNER.plan(
                    project(
                        50,
                        base,
                        medium,
                        task(StepKind.WHITEWASH, "Enamel off-white").withWorn(0.1))))
        .hasMessageContaining("water doesn't get through enamel");
    assertThatThrownBy(
            () ->
                EVERY_MEDIUM.plan(
                    project(50, any(StepKind.WHITEWASH, "lacquer paint").withWorn(0.1))))
        .hasMessageContaining("take an acrylic");
  }

  @Test
  void aPreHighlightShinesThroughHalfTheCoats() {
    Task highlight = task(StepKind.PRE_HIGHLIGHT, "Titanium white");
    Task cream = task(StepKind.BASE, "Deckhouse cream");

    double alone = PLANNER.plan(project(50, cream)).steps().get(0).work().passes();
    Plan over = PLANNER.plan(project(50, highlight, cream));

    assertThat(over.steps().get(1).work().passes()).isEqualTo((int) (alone / 2));
  }

  @Test
  void paintForWantedColoursIsFound() {
    Lab grey = Lab.ofD65(45, -1, -2);
    Task base = Task.of(StepKind.BASE, new Aim.OfColour(new Swatch.OfLab(grey)));
    Plan alone = PLANNER.plan(project(50, base));
    Lab then = alone.steps().get(0).look().prediction().lab();
    Task known = task(StepKind.FILTER, "Blue filter").withCoats(3);
    Lab cooler = PLANNER.plan(project(50, base, known)).lookOf("Hull").prediction().lab();
    Task filter = Task.of(StepKind.FILTER, new Aim.OfColour(new Swatch.OfLab(cooler)));

    Plan plan = PLANNER.withTestCards(1).plan(project(50, base, filter));

    assertThat(plan.steps().get(0).look().offBy().orElseThrow()).isLessThan(3);
    PlanStep found = plan.steps().get(1);
    assertThat(found.work().coats().get(0).mix().toText()).isEqualTo("Blue filter:1");
    assertThat(Ciede2000.deltaE(then, cooler)).isGreaterThan(3);
    assertThat(found.look().offBy().orElseThrow()).isLessThan(0.5);
    assertThat(plan.cards().orElseThrow().cards()).hasSize(1);
    assertThat(plan.cautions().stream().map(Enum::name)).contains("FRESH_AIR", "FLAMES");
  }

  @Test
  void aTargetThatNoBottleComesNearerToIsRefused() {
    Task base = task(StepKind.BASE, "Hull black");
    Task lighter =
        Task.of(StepKind.FILTER, new Aim.OfColour(new Swatch.OfLab(Lab.ofD65(22, 8, 12))));

    assertThatThrownBy(() -> PLANNER.plan(project(50, base, lighter)))
        .hasMessageStartingWith("Hull, step 2 (filter): no filter on the shelf brings it nearer");
  }

  @Test
  void aFilterThatIsNoFilterIsSaidToBeTooStrong() {
    Plan plan =
        PLANNER.plan(
            project(
                50,
                task(StepKind.BASE, "Deckhouse cream"),
                task(StepKind.FILTER, "Blue filter").withCoats(40)));

    assertThat(plan.steps().get(1).advice().toString()).contains("thin it more");
    assertThat(plan.trials()).containsExactly(plan.steps().get(1));
  }

  @Test
  void aBaseThatCameOutWrongIsCorrectedAndPaintedOnceMore() {
    Lab promised = DREDGER.steps().get(0).look().wanted().orElseThrow();
    Lab wrong = Lab.ofD65(promised.l() - 8, promised.a(), promised.b() + 2);

    Plan then =
        PLANNER.plan(
            PlanStatistics.PROJECT,
            List.of(new Done(1, Optional.of(new Done.Measured(new Swatch.OfLab(wrong))))));

    PlanStep again =
        then.steps().stream()
            .filter(step -> step.kind() == StepKind.CORRECTION)
            .findFirst()
            .orElseThrow();
    assertThat(then.steps().get(0).done()).isTrue();
    assertThat(then.steps().get(0).look().measured()).hasValue(wrong);
    assertThat(again.area()).isEqualTo("Hull");
    assertThat(again.look().offBy().orElseThrow()).isLessThan(3);
    assertThat(again.advice().get(0)).contains("came out ΔE00");
    // What the plan promised in the end is still in reach.
    assertThat(
            Ciede2000.deltaE(
                then.lookOf("Hull").prediction().lab(), DREDGER.lookOf("Hull").prediction().lab()))
        .isLessThan(3);
    assertThat(then.stepsOf("Deckhouse").stream().map(PlanStep::work).toList())
        .isEqualTo(DREDGER.stepsOf("Deckhouse").stream().map(PlanStep::work).toList());
  }

  @Test
  void laterStepsAreWorkedOutFromWhatWasMeasured() {
    Project project =
        project(
            50,
            task(StepKind.BASE, "Dredger grey"),
            task(StepKind.WHITEWASH, "Titanium white").withThinner(2).withCoats(2));
    Plan plan = PLANNER.plan(project);
    Lab promised = plan.lookOf("Hull").prediction().lab();
    Lab base = plan.steps().get(0).look().prediction().lab();
    // Within what isn't corrected in the pot: 2 lighter in L*.
    Lab lighter = Lab.ofD65(base.l() + 1.9, base.a(), base.b());

    Plan then =
        PLANNER.plan(
            project,
            List.of(new Done(1, Optional.of(new Done.Measured(new Swatch.OfLab(lighter))))));

    assertThat(kinds(then)).containsExactly(StepKind.BASE, StepKind.WHITEWASH);
    assertThat(then.lookOf("Hull").wanted()).hasValue(promised);
    assertThat(then.lookOf("Hull").offBy().orElseThrow()).isLessThan(1.5);
    assertThat(then.toDo()).hasSize(1);
  }

  @Test
  void withoutNewsNothingChangesAndWhatIsDoneIsNoLongerNeeded() {
    Plan then = PLANNER.plan(PlanStatistics.PROJECT, List.of(new Done(6, Optional.empty())));

    assertThat(then.steps().stream().map(PlanStep::work).toList())
        .isEqualTo(DREDGER.steps().stream().map(PlanStep::work).toList());
    assertThat(then.steps().get(5).done()).isTrue();
    assertThat(then.needs().paints().size()).isLessThan(DREDGER.needs().paints().size());
    assertThat(then.calendar().size()).isLessThan(DREDGER.calendar().size());
  }

  @Test
  void stepsThatAreNotThereAndStepsBackAreRefused() {
    Project project = project(50, task(StepKind.BASE, "Hull black"));

    assertThatThrownBy(() -> PLANNER.plan(project, List.of(new Done(2, Optional.empty()))))
        .hasMessageContaining("done is 2");
    assertThatThrownBy(
            () ->
                PLANNER.plan(
                    PlanStatistics.PROJECT,
                    List.of(new Done(3, Optional.empty()), new Done(2, Optional.empty()))))
        .hasMessageContaining("done is 2");
    assertThatThrownBy(() -> new Done(0, Optional.empty())).hasMessageContaining("done is 0");
  }

  @Test
  void varnishesShineAsAskedForAndAreBoughtWhereThereIsNone() {
    Task satin = Task.of(StepKind.VARNISH, new Aim.Usual()).withFinish(Finish.SATIN);
    Task base = task(StepKind.BASE, "Hull black");
    assertThat(PLANNER.plan(project(50, base, satin)).steps().get(1).top().orElseThrow().finish())
        .isEqualTo(Finish.SATIN);
    Shelf bare = Shelf.of("Bare", List.of(SHELF.paint("Hull black")));

    Plan plan =
        Planner.of(ShelfOptics.estimate(bare), TristimulusWeights.D65)
            .plan(project(50, base, satin));

    Coat bought = plan.steps().get(1).top().orElseThrow();
    assertThat(bought.mix().toText()).isEqualTo("satin acrylic varnish:1");
    assertThat(bought.medium()).isEqualTo(Medium.ACRYLIC);
    assertThat(plan.needs().missing()).hasSize(1);
  }

  @Test
  void tasksThatMakeNoSenseAreRefused() {
    assertThatThrownBy(() -> Task.of(StepKind.SEAL, new Aim.Usual()))
        .hasMessageContaining("puts in itself");
    assertThatThrownBy(() -> Task.of(StepKind.BASE, new Aim.Usual()))
        .hasMessageContaining("needs a paint, a mix or a target");
    assertThatThrownBy(() -> task(StepKind.LADDER, "Hull black"))
        .hasMessageContaining("needs from and to");
    assertThatThrownBy(() -> task(StepKind.VARNISH, "Half-sheen varnish").withWorn(0.1))
        .hasMessageContaining("isn't worn off");
    assertThatThrownBy(() -> task(StepKind.BASE, "Hull black").withCoverage(0))
        .hasMessageContaining("coverage");
    assertThatThrownBy(() -> new BenchHours(Set.of(), Set.of())).hasMessageContaining("empty");
    assertThatThrownBy(() -> project(0, task(StepKind.BASE, "Hull black")))
        .hasMessageContaining("squareCentimetres");
  }
}
