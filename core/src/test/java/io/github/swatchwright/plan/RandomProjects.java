package io.github.swatchwright.plan;

import io.github.swatchwright.colour.Lab;
import io.github.swatchwright.mix.Mix;
import io.github.swatchwright.paint.Finish;
import io.github.swatchwright.paint.Medium;
import io.github.swatchwright.paint.Paint;
import io.github.swatchwright.paint.Shelf;
import io.github.swatchwright.paint.Swatch;
import io.github.swatchwright.paint.Use;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** Projects as careless as can be: any medium over any other, washes and chips anywhere. */
final class RandomProjects {
  private static final List<StepKind> KINDS =
      StepKind.askable().stream().filter(kind -> kind != StepKind.LADDER).toList();

  private static final List<Medium> MEDIA = List.of(Medium.values());

  /** A paint and a wash of every medium, and varnishes of two. */
  static final Shelf SHELF = Shelf.of("Every medium", paints());

  private final Random random;

  RandomProjects(long seed) {
    random = new Random(seed);
  }

  private static List<Paint> paints() {
    List<Paint> paints = new ArrayList<>();
    double l = 20;
    for (Medium medium : Medium.values()) {
      l += 10;
      paints.add(Paint.of(medium.word() + " paint", medium, new Swatch.OfLab(Lab.ofD65(l, 5, 10))));
      paints.add(
          Paint.of(medium.word() + " wash", medium, new Swatch.OfLab(Lab.ofD65(l - 15, 5, 5)))
              .withUse(Use.WASH));
    }
    paints.add(varnish("acrylic varnish", Medium.ACRYLIC));
    paints.add(varnish("lacquer varnish", Medium.LACQUER));
    return paints;
  }

  private static Paint varnish(String name, Medium medium) {
    return Paint.of(name, medium).withUse(Use.VARNISH).withFinish(Finish.MATT);
  }

  Project next() {
    int count = 2 + random.nextInt(5);
    List<Task> tasks = new ArrayList<>();
    while (tasks.size() < count) {
      tasks.add(task(KINDS.get(random.nextInt(KINDS.size()))));
    }
    return Project.of("Any", List.of(new ProjectArea("Area", 50, ProjectArea.BARE_PLASTIC, tasks)));
  }

  private Task task(StepKind kind) {
    String medium = MEDIA.get(random.nextInt(MEDIA.size())).word();
    if (kind == StepKind.CHIPPING_MEDIUM) {
      return Task.of(kind, new Aim.Usual());
    }
    if (kind == StepKind.VARNISH) {
      String varnish = random.nextBoolean() ? "acrylic varnish" : "lacquer varnish";
      return Task.of(kind, random.nextBoolean() ? new Aim.Usual() : new Aim.OfMix(mix(varnish)));
    }
    boolean wash = kind == StepKind.WASH || kind == StepKind.FILTER;
    Task task = Task.of(kind, new Aim.OfMix(mix(medium + (wash ? " wash" : " paint"))));
    if (random.nextInt(4) == 0) {
      task = task.withThinner(random.nextInt(8));
    }
    return random.nextInt(5) == 0 ? task.withWorn(0.2) : task;
  }

  private static Mix mix(String paint) {
    return Mix.of(SHELF.paint(paint));
  }
}
