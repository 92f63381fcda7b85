/**
 * A model's steps in order: what to mix, what to spray over what and when, and how each area will
 * look after each step, from a {@link io.github.swatchwright.plan.Project} that says what is
 * wanted.
 *
 * <p>The order is checked with the rules of {@link io.github.swatchwright.coat.SolventRules}: where
 * a thinner would lift what lies below, a varnish is put in between, with the reason. Working times
 * are common practice of the trade, without a source: labels win.
 *
 * <pre>{@code
 * Task base = Task.of(StepKind.BASE, new Aim.OfMix(Mix.parse("Dredger grey", shelf)));
 * Task wash = Task.of(StepKind.WHITEWASH, new Aim.OfMix(Mix.parse("Whitewash wash", shelf)));
 * ProjectArea hull = new ProjectArea("Hull", 120, ProjectArea.BARE_PLASTIC, List.of(base, wash));
 * Planner planner = Planner.of(ShelfOptics.estimate(shelf), TristimulusWeights.D65);
 * List<PlanStep> steps = planner.plan(Project.of("Old dredger", List.of(hull))).toDo();
 * }</pre>
 */
@NullMarked
package io.github.swatchwright.plan;

import org.jspecify.annotations.NullMarked;
