package pressweek.examples;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class DrawTest {
  /**
   * The first five numbers of seed 1234567, a published check of SplitMix64 (Rosetta Code; value
   * from memory).
   */
  @Test
  void firstNumbersAreThoseOfSplitMix64() {
    Draw draw = new Draw(1234567);
    List<String> numbers =
        Stream.generate(() -> Long.toUnsignedString(draw.next())).limit(5).toList();
    assertThat(numbers)
        .containsExactly(
            "6457827717110365317",
            "3203168211198807973",
            "9817491932198370423",
            "4593380528125082431",
            "16408922859458223821");
  }

  @Test
  void betweenReachesBothEndsAndNoFurther() {
    Draw draw = new Draw(1);
    assertThat(IntStream.range(0, 200).map(i -> draw.between(3, 6)))
        .contains(3, 6)
        .allMatch(n -> n >= 3 && n <= 6);
  }

  @Test
  void someAreDifferentAndFromTheList() {
    List<Integer> all = List.of(1, 2, 3, 4, 5);
    assertThat(new Draw(7).some(all, 3)).hasSize(3).doesNotHaveDuplicates().isSubsetOf(all);
    assertThat(new Draw(7).some(all, 9)).containsExactlyInAnyOrderElementsOf(all);
  }

  @Test
  void weightThreeComesThreeTimesAsOften() {
    Draw draw = new Draw(11);
    long second = IntStream.range(0, 4000).filter(i -> draw.weighted(List.of(1, 3)) == 1).count();
    assertThat(second).isBetween(2850L, 3150L);
  }
}
