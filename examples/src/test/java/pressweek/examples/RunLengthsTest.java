package pressweek.examples;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class RunLengthsTest {
  private static final PlantSize SIZE = new PlantSize(150, 14);

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5})
  void runsAndChangesFillNineTenthsOfThePressHours(long seed) {
    List<DrawnLine> lines = lines(SIZE, seed);
    long minutes = sum(RunLengths.of(SIZE, lines, Collections.nCopies(150, 100))) + 150 * 45;
    assertThat(minutes * 100 / (14L * SIZE.pressMinutes())).isBetween(85L, 93L);
  }

  @Test
  void aLineOfTwiceTheShareRunsTwiceAsLongOnTheSamePress() {
    PlantSize size = new PlantSize(12, 1);
    List<Integer> shares = List.of(100, 200, 100, 100, 100, 100, 100, 100, 100, 100, 100, 100);
    List<Integer> minutes = RunLengths.of(size, lines(size, 1), shares);
    assertThat(minutes.get(1)).isBetween(2 * minutes.get(0) - 12, 2 * minutes.get(0) + 12);
    assertThat(sum(minutes)).isBetween(4028L - 12, 4028L);
  }

  @Test
  void noRunIsLongerThanTwentyHoursOrShorterThanTwentyMinutes() {
    PlantSize few = new PlantSize(3, 3);
    assertThat(RunLengths.of(few, lines(few, 1), List.of(100, 100, 100))).allMatch(m -> m <= 1200);
    assertThat(RunLengths.of(SIZE, lines(SIZE, 1), shares())).allMatch(m -> m >= 20);
  }

  private static List<Integer> shares() {
    List<Integer> shares = new ArrayList<>(Collections.nCopies(150, 100));
    shares.set(7, 1);
    return shares;
  }

  private static List<DrawnLine> lines(PlantSize size, long seed) {
    Draw draw = new Draw(seed);
    List<DrawnInsert> inserts = InsertSheet.draw(draw.fork(), size);
    List<DrawnHead> heads =
        new MoldSheet(draw.fork(), size, PressSheet.draw(size), inserts).heads();
    return new OrderSheet(draw.fork(), size).lines(heads);
  }

  private static long sum(List<Integer> minutes) {
    return minutes.stream().mapToLong(Integer::intValue).sum();
  }
}
