package io.github.swatchwright.coat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import io.github.swatchwright.paint.Medium;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What is checked here is common practice of the trade; there is no published table of it. */
class SolventRulesTest {
  /** Strength of the thinner, from mild to hot. */
  private static final Map<Medium, Integer> HEAT =
      Map.of(
          Medium.WATER, 0, Medium.ACRYLIC, 0, Medium.ENAMEL, 1, Medium.OIL, 1, Medium.LACQUER, 2);

  @Test
  void everyPairOfMediaHasExactlyOneRule() {
    for (Medium lower : Medium.values()) {
      for (Medium upper : Medium.values()) {
        assertThat(SolventRules.coats())
            .filteredOn(rule -> rule.lower() == lower && rule.upper() == upper)
            .as("%s under %s", lower, upper)
            .hasSize(1);
      }
    }
  }

  @Test
  void aHotterSolventOverABinderOfWhiteSpiritClashes() {
    for (Medium lower : List.of(Medium.ENAMEL, Medium.OIL)) {
      SolventRule rule = SolventRules.of(lower, Medium.LACQUER, 0);
      assertThat(HEAT.get(Medium.LACQUER)).isGreaterThan(HEAT.get(lower));
      assertThat(rule.verdict()).isEqualTo(SolventVerdict.CLASH);
      assertThat(rule.remedy()).contains("varnish");
    }
  }

  @Test
  void lacquerGoesOverAcrylicOnlyMisted() {
    SolventRule coat = SolventRules.of(Medium.ACRYLIC, Medium.LACQUER, 1);
    assertThat(coat.verdict()).isEqualTo(SolventVerdict.CAREFUL);
    assertThat(coat.remedy()).contains("mist");
    assertThat(SolventRules.of(Medium.ACRYLIC, Medium.LACQUER, 10).verdict())
        .isEqualTo(SolventVerdict.CLASH);
  }

  @Test
  void washesOfWhiteSpiritWantAnotherKindOfPaintBelow() {
    for (Medium upper : List.of(Medium.ENAMEL, Medium.OIL)) {
      assertThat(SolventRules.of(Medium.ACRYLIC, upper, 10).verdict())
          .isEqualTo(SolventVerdict.SAFE);
      assertThat(SolventRules.of(Medium.LACQUER, upper, 10).verdict())
          .isEqualTo(SolventVerdict.SAFE);
      assertThat(SolventRules.of(Medium.ENAMEL, upper, 10).verdict())
          .isEqualTo(SolventVerdict.CLASH);
      assertThat(SolventRules.of(Medium.OIL, upper, 10).verdict()).isEqualTo(SolventVerdict.CLASH);
    }
  }

  @Test
  void nothingAttacksLacquer() {
    for (Medium upper : Medium.values()) {
      assertThat(SolventRules.of(Medium.LACQUER, upper, 10).verdict())
          .isEqualTo(SolventVerdict.SAFE);
    }
  }

  @Test
  void aWashIsNeverSaferThanACoatAndWhatIsNotSafeHasARemedy() {
    for (Medium lower : Medium.values()) {
      for (Medium upper : Medium.values()) {
        SolventRule coat = SolventRules.of(lower, upper, 0);
        SolventRule wash = SolventRules.of(lower, upper, SolventRules.WASH_FROM);
        assertThat(wash.verdict()).isGreaterThanOrEqualTo(coat.verdict());
        for (SolventRule rule : List.of(coat, wash)) {
          assertThat(rule.reason()).isNotBlank();
          assertThat(rule.remedy().isEmpty()).isEqualTo(rule.verdict() == SolventVerdict.SAFE);
        }
      }
    }
  }

  // What is called a glaze, a wash or a filter works on what is below as a wash does.
  @ParameterizedTest
  @ValueSource(doubles = {0, 2.99, 3, 10, 20})
  void aCoatIsAWashForTheRulesFromAGlazeOn(double thinner) {
    boolean isWash = CoatUse.of(thinner) != CoatUse.COAT;
    for (Medium lower : Medium.values()) {
      for (Medium upper : Medium.values()) {
        assertThat(SolventRules.of(lower, upper, thinner))
            .isEqualTo(SolventRules.of(lower, upper, isWash));
      }
    }
  }

  @Test
  void thinnerBelowZeroIsRefused() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> SolventRules.of(Medium.OIL, Medium.OIL, -1))
        .withMessage("thinner is -1.0, must be a finite number of at least 0");
  }

  @Test
  void solventsDryInTheUsualOrder() {
    assertThat(Wait.after(Medium.LACQUER).mostHours())
        .isLessThan(Wait.after(Medium.ACRYLIC).leastHours());
    assertThat(Wait.after(Medium.ACRYLIC).mostHours())
        .isLessThan(Wait.after(Medium.ENAMEL).leastHours());
    assertThat(Wait.after(Medium.OIL).leastHours()).isGreaterThanOrEqualTo(24);
  }

  @Test
  void cautionsGoWithTheMedia() {
    assertThat(Caution.forMedia(List.of(Medium.ACRYLIC)))
        .containsExactly(Caution.ACRYLIC_MIST, Caution.DUST, Caution.DATA_SHEET);
    assertThat(Caution.forMedia(List.of(Medium.ACRYLIC, Medium.ENAMEL)))
        .contains(Caution.EXTRACTION, Caution.FLAMES, Caution.OILY_RAGS, Caution.DATA_SHEET);
    assertThat(Caution.forMedia(List.of(Medium.LACQUER))).contains(Caution.ISOCYANATES);
    for (Medium solvent : List.of(Medium.LACQUER, Medium.ENAMEL, Medium.OIL)) {
      assertThat(Caution.forMedia(List.of(solvent)))
          .contains(Caution.EXTRACTION, Caution.FLAMES, Caution.DATA_SHEET);
    }
  }
}
