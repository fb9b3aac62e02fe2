package pressweek.data.molding;

import java.util.Optional;

/**
 * How long a section of a part cools in the mold before it can be ejected: always an estimate. A
 * recorded cycle beats it, since published diffusivities of one resin differ by up to 1.8 times.
 *
 * <p>First term of the exact series of heat conduction (Carslaw and Jaeger; constants from pi and
 * the first zero of the Bessel function J0). Plate of thickness s: {@code t = s^2 / (pi^2 a) ln(f
 * (Tm - Tw) / (Te - Tw))} with f = 8/pi^2 for the mean temperature of the section, 4/pi for its
 * centre. Cylinder of diameter D: {@code t = D^2 / (23.13 a) ln(f (Tm - Tw) / (Te - Tw))} with f =
 * 0.692 for the mean, 1.602 for the centre.
 *
 * @param shape shape that was assumed
 * @param criterion which temperature has to fall to that of ejection
 * @param seconds seconds; 0 for a section so thin that the first term does not describe it
 */
public record Cooling(Shape shape, Criterion criterion, double seconds) {
  private static final double J0_ZERO = 2.404826;
  private static final double J1_AT_ZERO = 0.519147;

  /** The shape of a section. */
  public enum Shape {
    /** A wall, cooled from both faces. */
    PLATE(Math.PI * Math.PI, 8 / (Math.PI * Math.PI), 4 / Math.PI),
    /** A solid round section. */
    CYLINDER(4 * J0_ZERO * J0_ZERO, 4 / (J0_ZERO * J0_ZERO), 2 / (J0_ZERO * J1_AT_ZERO));

    private final double divisor;
    private final double mean;
    private final double centre;

    Shape(double divisor, double mean, double centre) {
      this.divisor = divisor;
      this.mean = mean;
      this.centre = centre;
    }

    /** What the diffusivity is multiplied with in the formula. */
    public double divisor() {
      return divisor;
    }

    /** The factor in the logarithm of the formula. */
    public double factor(Criterion criterion) {
      return criterion == Criterion.MEAN ? mean : centre;
    }
  }

  /** Which temperature of the section has to fall to that of ejection. */
  public enum Criterion {
    MEAN,
    CENTRE
  }

  /**
   * A section of a part.
   *
   * @param shape its shape
   * @param mm thickness of the wall or diameter, mm
   */
  public record Section(Shape shape, double mm) {}

  /** Temperatures of the melt, of the mold's wall and at ejection, degrees Celsius. */
  public record Heat(double meltC, double moldC, double ejectC) {
    /** True when the melt is hotter than the part at ejection, and that hotter than the mold. */
    public boolean inOrder() {
      return meltC > ejectC && ejectC > moldC;
    }
  }

  /**
   * The cooling time of a section; empty when the temperatures are out of order (a part never gets
   * colder than its mold), or a size or the diffusivity is not above 0.
   *
   * @param diffusivityMm2S thermal diffusivity, mm2/s
   */
  public static Optional<Cooling> of(
      Section section, Criterion criterion, double diffusivityMm2S, Heat heat) {
    if (!heat.inOrder() || !(section.mm() > 0) || !(diffusivityMm2S > 0)) {
      return Optional.empty();
    }
    Shape shape = section.shape();
    double ratio = (heat.meltC() - heat.moldC()) / (heat.ejectC() - heat.moldC());
    double log = Math.log(shape.factor(criterion) * ratio);
    double seconds = section.mm() * section.mm() / (shape.divisor() * diffusivityMm2S) * log;
    return Optional.of(new Cooling(shape, criterion, Math.max(0, seconds)));
  }
}
