package pressweek.reports.wall;

import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import pressweek.reports.hours.PlantClock;
import pressweek.reports.hours.Span;

/**
 * Where a minute stands on the wall, in pixels from the left. Time in which no press works is drawn
 * narrow.
 */
final class TimeAxis {
  /**
   * Width that a week should have, so that it fits a screen of 1280 pixels and a sheet of paper
   * beside the labels.
   */
  static final double TARGET = 1_120;

  /** An hour in a week that does not fit. */
  private static final double USUAL_PER_HOUR = 12;

  /** The narrowest hour by which a week is made to fit. */
  private static final double SNUG_PER_HOUR = 9.5;

  private static final double MAX_PER_HOUR = 36;
  private static final double SQUEEZED_PER_HOUR = 1.2;
  private static final double SQUEEZED_MIN = 14;
  private static final int SQUEEZE_FROM_MIN = 90;

  private final List<Piece> pieces;

  private TimeAxis(List<Piece> pieces) {
    this.pieces = List.copyOf(pieces);
  }

  /**
   * A stretch with one scale: its span, where it begins, how wide it is, and whether it is drawn
   * narrow.
   */
  record Piece(Span span, double x, double width, boolean squeezed) {}

  /**
   * A part of the axis that is one picture: its span, where it begins on the axis, how wide it is.
   */
  record Band(Span span, double x, double width) {}

  /** The axis for a stretch of time in which presses work at the given spans. */
  static TimeAxis of(Span extent, List<Span> working) {
    List<Span> idle =
        Span.without(List.of(extent), working).stream()
            .filter(s -> s.minutes() >= SQUEEZE_FROM_MIN)
            .toList();
    List<Span> open = Span.without(List.of(extent), idle);
    double narrow = idle.stream().mapToDouble(TimeAxis::squeezedWidth).sum();
    double hours = open.stream().mapToInt(Span::minutes).sum() / 60.0;
    double wanted = hours == 0 ? MAX_PER_HOUR : (TARGET - narrow) / hours;
    double perHour = wanted < SNUG_PER_HOUR ? USUAL_PER_HOUR : Math.min(MAX_PER_HOUR, wanted);
    List<Span> all = new ArrayList<>(idle);
    all.addAll(open);
    all.sort((a, b) -> Integer.compare(a.fromMin(), b.fromMin()));
    List<Piece> pieces = new ArrayList<>();
    double x = 0;
    for (Span span : all) {
      boolean squeezed = idle.contains(span);
      double width = squeezed ? squeezedWidth(span) : span.minutes() / 60.0 * perHour;
      pieces.add(new Piece(span, x, width, squeezed));
      x += width;
    }
    return new TimeAxis(pieces);
  }

  private static double squeezedWidth(Span span) {
    return Math.max(SQUEEZED_MIN, span.minutes() / 60.0 * SQUEEZED_PER_HOUR);
  }

  /** The stretches in order of time. */
  List<Piece> pieces() {
    return pieces;
  }

  /** From the first minute to the last. */
  Span extent() {
    return new Span(pieces.get(0).span().fromMin(), pieces.get(pieces.size() - 1).span().toMin());
  }

  /** Where a minute stands; before the first and after the last it is at the edge. */
  double x(int minute) {
    int low = 0;
    int high = pieces.size() - 1;
    while (low < high) {
      int middle = (low + high) / 2;
      if (pieces.get(middle).span().toMin() <= minute) {
        low = middle + 1;
      } else {
        high = middle;
      }
    }
    Piece piece = pieces.get(low);
    double share = (minute - piece.span().fromMin()) / (double) piece.span().minutes();
    return piece.x() + piece.width() * Math.min(1, Math.max(0, share));
  }

  /** Width of the whole. */
  double width() {
    return x(extent().toMin());
  }

  /**
   * The axis cut at midnights into pictures that are no wider than the target, as far as a day
   * allows it.
   */
  List<Band> bands(PlantClock clock) {
    List<Band> bands = new ArrayList<>();
    int from = extent().fromMin();
    int end = from;
    for (int next : cuts(clock)) {
      if (end > from && x(next) - x(from) > TARGET) {
        bands.add(band(from, end));
        from = end;
      }
      end = next;
    }
    bands.add(band(from, end));
    return List.copyOf(bands);
  }

  private Band band(int fromMin, int toMin) {
    return new Band(new Span(fromMin, toMin), x(fromMin), x(toMin) - x(fromMin));
  }

  /** Midnights within the extent, and its end. */
  private List<Integer> cuts(PlantClock clock) {
    List<Integer> cuts = new ArrayList<>();
    Span extent = extent();
    ZonedDateTime day =
        clock.at(extent.fromMin()).toLocalDate().plusDays(1).atStartOfDay(clock.zone());
    while (PlantClock.minute(day) < extent.toMin()) {
      cuts.add(PlantClock.minute(day));
      day = day.toLocalDate().plusDays(1).atStartOfDay(clock.zone());
    }
    cuts.add(extent.toMin());
    return cuts;
  }
}
