package pressweek.solver.audit;

import static org.assertj.core.api.Assertions.assertThatCode;

import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import pressweek.data.plan.Plan;

/** Plans with random nonsense in them never make the audit throw. */
class AbsurdPlanTest {
  private static final List<String> IDS =
      List.of("", "R1", "R2", "A/1", "C/2", "G/1", "H/1", "P1", "P3", "M1", "M3", "L1", "no such");
  private static final int[] NUMBERS = {
    Integer.MIN_VALUE, -1, 0, 1, Parts.at("Mon 06:00"), Parts.at("Fri 22:00"), Integer.MAX_VALUE
  };

  @RepeatedTest(100)
  void nonsenseGivesFindingsOnly(RepetitionInfo repetition) {
    Random random = new Random(repetition.getCurrentRepetition());
    Plan plan = WeekPlan.plan();
    int edits = 1 + random.nextInt(8);
    for (int i = 0; i < edits; i++) {
      List<String> paths = paths("", plan);
      String path = paths.get(random.nextInt(paths.size()));
      plan = Edited.edit(plan, path, old -> nonsense(old, random));
    }
    Plan absurd = plan;
    assertThatCode(() -> Audit.check(WeekProblem.problem(), absurd)).doesNotThrowAnyException();
  }

  private static Object nonsense(Object old, Random random) {
    if (old instanceof String) {
      return IDS.get(random.nextInt(IDS.size()));
    }
    if (old instanceof Integer) {
      return NUMBERS[random.nextInt(NUMBERS.length)];
    }
    if (old instanceof Long) {
      return random.nextBoolean() ? random.nextLong() : Long.MIN_VALUE;
    }
    if (old instanceof List<?> list && !list.isEmpty()) {
      int index = random.nextInt(list.size());
      return random.nextBoolean()
          ? Edited.without(index).apply(list)
          : Edited.with(index, list.get(random.nextInt(list.size()))).apply(list);
    }
    return old;
  }

  /** Every value of a plan by its path, those of its problem left out. */
  private static List<String> paths(String prefix, Record record) {
    List<String> paths = new ArrayList<>();
    for (RecordComponent component : record.getClass().getRecordComponents()) {
      String path = prefix + component.getName();
      Object value = read(record, component);
      paths.add(path);
      if (value instanceof List<?> list) {
        for (int i = 0; i < list.size(); i++) {
          if (list.get(i) instanceof Record element) {
            paths.addAll(paths(path + "[" + i + "].", element));
          }
        }
      } else if (value instanceof Record inner && !path.equals("problem")) {
        paths.addAll(paths(path + ".", inner));
      }
    }
    return paths;
  }

  private static Object read(Record record, RecordComponent component) {
    try {
      return component.getAccessor().invoke(record);
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException(e);
    }
  }
}
