package pressweek.examples.outside;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import pressweek.data.plan.Plan;
import pressweek.data.plan.Rule;

/**
 * The planner on five of the 125 instances of weighted tardiness with 40 jobs on one machine (every
 * tenth of the first fifty), of H. A. J. Crauwels, C. N. Potts and L. N. Van Wassenhove, Local
 * search heuristics for the single machine total weighted tardiness scheduling problem, INFORMS
 * Journal on Computing 10 (1998) 341-350, with the optima given in OR-Library (J. E. Beasley).
 */
class OrLibraryTest {
  private static final int STEPS = 2_000;

  /** Instances by their number: optimum, minutes of the jobs, weights, due times. */
  private enum Instance {
    WT40_1(
        913,
        of(
            26, 24, 79, 46, 32, 35, 73, 74, 14, 67, 86, 46, 78, 40, 29, 94, 64, 27, 90, 55, 35, 52,
            36, 69, 85, 95, 14, 78, 37, 86, 44, 28, 39, 12, 30, 68, 70, 9, 49, 50),
        of(
            1, 10, 9, 10, 10, 4, 3, 2, 10, 3, 7, 3, 1, 3, 10, 4, 7, 7, 4, 7, 5, 3, 5, 4, 9, 5, 2, 8,
            10, 4, 7, 4, 9, 5, 7, 7, 5, 10, 1, 3),
        of(
            1588, 1620, 1731, 1773, 1694, 1487, 1566, 1844, 1727, 1636, 1599, 1539, 1855, 1645,
            1709, 1660, 1582, 1836, 1484, 1559, 1772, 1510, 1512, 1795, 1522, 1509, 1598, 1658,
            1826, 1628, 1650, 1833, 1627, 1528, 1541, 1497, 1481, 1446, 1579, 1814)),
    WT40_11(
        17465,
        of(
            41, 18, 66, 42, 100, 71, 89, 19, 92, 3, 75, 57, 46, 2, 53, 57, 17, 9, 30, 25, 90, 19,
            93, 69, 76, 79, 5, 100, 16, 89, 7, 32, 78, 4, 21, 85, 60, 29, 43, 77),
        of(
            9, 10, 5, 5, 3, 1, 5, 9, 1, 8, 1, 10, 5, 8, 9, 1, 9, 4, 6, 3, 2, 5, 4, 1, 5, 6, 7, 7, 5,
            7, 3, 6, 8, 6, 4, 6, 9, 4, 6, 2),
        of(
            928, 623, 690, 630, 796, 811, 728, 670, 618, 788, 609, 629, 984, 841, 918, 809, 613,
            644, 724, 764, 667, 713, 797, 663, 951, 920, 716, 892, 677, 774, 894, 652, 988, 696,
            872, 713, 971, 719, 956, 836)),
    WT40_21(
        77774,
        of(
            82, 18, 55, 14, 1, 36, 73, 72, 26, 3, 8, 18, 2, 77, 11, 26, 5, 66, 7, 68, 37, 35, 100,
            21, 29, 98, 73, 67, 41, 26, 87, 87, 59, 41, 81, 69, 99, 17, 71, 2),
        of(
            5, 5, 4, 9, 10, 2, 1, 5, 3, 1, 6, 2, 4, 8, 8, 2, 1, 7, 1, 7, 10, 8, 2, 1, 6, 6, 1, 9, 2,
            2, 3, 7, 1, 4, 4, 10, 2, 5, 5, 7),
        of(
            0, 0, 123, 0, 5, 168, 104, 41, 0, 0, 0, 62, 170, 61, 163, 59, 0, 113, 76, 0, 30, 55, 0,
            136, 68, 179, 0, 0, 54, 0, 0, 0, 0, 0, 154, 33, 0, 28, 130, 0)),
    WT40_31(
        6575,
        of(
            66, 83, 4, 64, 29, 66, 54, 6, 82, 80, 92, 79, 88, 52, 84, 24, 44, 60, 75, 83, 68, 36,
            88, 2, 13, 64, 25, 29, 54, 84, 65, 17, 99, 85, 65, 22, 81, 11, 62, 100),
        of(
            9, 8, 7, 5, 2, 4, 6, 8, 3, 1, 7, 9, 5, 4, 5, 8, 4, 10, 10, 1, 1, 7, 4, 1, 6, 3, 3, 4, 9,
            9, 6, 6, 7, 3, 7, 5, 5, 9, 2, 7),
        of(
            1480, 1684, 1474, 1438, 1532, 931, 1041, 1110, 1219, 1826, 1694, 998, 1607, 1400, 1174,
            1018, 1033, 961, 1708, 1405, 1424, 1264, 1014, 1314, 1350, 1797, 1122, 1531, 1424, 1441,
            1208, 1252, 1022, 1410, 938, 1703, 933, 1338, 1518, 1090)),
    WT40_41(
        57640,
        of(
            63, 27, 17, 40, 27, 48, 15, 46, 78, 96, 81, 39, 99, 65, 2, 26, 2, 3, 40, 19, 28, 10, 38,
            33, 44, 39, 15, 85, 49, 99, 70, 96, 66, 47, 79, 90, 48, 98, 97, 94),
        of(
            7, 8, 1, 4, 9, 8, 9, 1, 10, 10, 6, 4, 2, 3, 5, 8, 3, 1, 9, 7, 3, 5, 8, 5, 6, 2, 2, 8, 8,
            4, 7, 3, 1, 1, 2, 9, 7, 6, 7, 3),
        of(
            625, 448, 143, 797, 452, 717, 316, 387, 491, 464, 203, 778, 536, 518, 462, 512, 296,
            316, 756, 578, 131, 129, 691, 685, 575, 431, 369, 57, 607, 17, 505, 289, 453, 292, 509,
            382, 690, 111, 254, 425));

    private final long optimum;
    private final OneMachine machine;

    Instance(long optimum, int[] run, int[] weight, int[] due) {
      this.optimum = optimum;
      machine = OneMachine.of(run, weight, due);
    }

    private static int[] of(int... numbers) {
      return numbers;
    }
  }

  @ParameterizedTest
  @EnumSource
  void plannerFindsThePublishedOptimum(Instance instance) {
    Plan plan = Planned.inSteps(instance.machine.problem(), STEPS, 1);
    assertThat(plan.figures().costByRule())
        .isEqualTo(Map.of(Rule.LATE, instance.optimum * OneMachine.UNIT));
  }
}
