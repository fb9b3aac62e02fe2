package pressweek.solver.audit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import java.util.Set;
import pressweek.data.problem.Component;
import pressweek.data.problem.Job;
import pressweek.data.problem.Receipt;
import pressweek.data.problem.Stock;
import pressweek.data.problem.Take;

/** Free stock of components over time and what runs take from it, worked out from the problem. */
final class StockBook {
  /** The order in which runs draw. */
  private static final Comparator<Draw> IN_TURN =
      Comparator.comparingLong(Draw::startMin).thenComparingInt(Draw::place);

  private final Stock stock;
  private final Set<String> listed = new HashSet<>();
  private final Map<String, List<Draw>> draws = new LinkedHashMap<>();
  private final long leadMin;
  private final long endMin;

  /**
   * Pieces that a run takes of a component from free stock; grams where it is weighed.
   *
   * @param stay the run
   * @param component what the component is
   * @param startMin when the run starts
   * @param needMin when they must be at its press
   * @param pieces pieces
   * @param place place of its line among the jobs
   */
  record Draw(Stay stay, Component component, long startMin, long needMin, long pieces, int place) {
    /** The same for a run that starts at another time. */
    Draw at(long otherStartMin) {
      long moved = otherStartMin - startMin;
      return new Draw(stay, component, otherStartMin, needMin + moved, pieces, place);
    }
  }

  /** A draw for which so much less is free than it takes. */
  record Shortage(Draw draw, long free) {}

  StockBook(Week week) {
    stock = week.problem().materials().stock();
    leadMin = week.problem().plant().crew().insertLeadMin();
    endMin = week.problem().plant().hours().endMin();
    stock.lots().forEach(lot -> listed.add(lot.what()));
    stock.receipts().forEach(receipt -> listed.add(receipt.what()));
    Map<String, Integer> places = new HashMap<>();
    for (Job job : week.problem().jobs()) {
      places.putIfAbsent(job.id(), places.size());
    }
    for (Stay stay : week.stays()) {
      Map<String, Draw> ofRun = new LinkedHashMap<>();
      for (Take take : stay.option().making().takes()) {
        if (counts(take)) {
          int place = places.getOrDefault(stay.job().id(), 0);
          Draw draw = draw(stay, take, place);
          ofRun.merge(take.insert(), draw, StockBook::together);
        }
      }
      ofRun.forEach((what, draw) -> draws.computeIfAbsent(what, w -> new ArrayList<>()).add(draw));
    }
  }

  private Draw draw(Stay stay, Take take, int place) {
    long start = stay.run().startMin();
    return new Draw(stay, take.component(), start, needMin(start), stay.freePieces(take), place);
  }

  private static Draw together(Draw one, Draw other) {
    return new Draw(
        one.stay, one.component, one.startMin, one.needMin, one.pieces + other.pieces, one.place);
  }

  /**
   * True when stock of the component is counted: of inserts when the plant gave lots, of all else
   * where it has a lot or a receipt.
   */
  boolean counts(Take take) {
    return take.component() == Component.INSERT ? stock.checked() : listed.contains(take.insert());
  }

  long needMin(long runStartMin) {
    return runStartMin - leadMin;
  }

  /** All takes by component. */
  Map<String, List<Draw>> draws() {
    return draws;
  }

  /** Lots and receipts of a component, all full, in the order in which free ones are used. */
  List<Source> sources(String what) {
    List<Source> sources = new ArrayList<>();
    stock.lots().stream()
        .filter(lot -> lot.what().equals(what))
        .forEach(lot -> sources.add(Source.of(lot, endMin)));
    stock.receipts().stream()
        .filter(receipt -> receipt.what().equals(what))
        .forEach(receipt -> sources.add(Source.of(receipt)));
    sources.sort(Source.FIRST_TO_USE);
    return sources;
  }

  /**
   * Draws of a component that find too little when all are drawn in turn. What was not there is
   * counted once, not against every later run again.
   */
  List<Shortage> shortages(String what, List<Draw> all) {
    List<Source> sources = sources(what).stream().filter(Source::isFree).toList();
    List<Shortage> shortages = new ArrayList<>();
    for (Draw draw : all.stream().filter(d -> d.pieces() > 0).sorted(IN_TURN).toList()) {
      List<Source> usable =
          sources.stream()
              .filter(source -> source.serves(draw.needMin(), draw.startMin()))
              .toList();
      long free = usable.stream().mapToLong(Source::left).sum();
      if (free < draw.pieces()) {
        shortages.add(new Shortage(draw, free));
      }
      take(draw, usable);
    }
    return shortages;
  }

  private static void take(Draw draw, List<Source> usable) {
    long missing = draw.pieces();
    if (draw.stay().job().traced()) {
      for (Source source : usable) {
        if (source.left() >= missing) {
          source.take(missing);
          return;
        }
      }
    }
    for (Source source : usable) {
      missing -= source.take(missing);
    }
  }

  /** Pieces that last and have come in free by a time, whatever has been taken. */
  long cameIn(String what, long min) {
    return sources(what).stream()
        .filter(source -> source.isFree() && source.serves(min, endMin - 1))
        .mapToLong(Source::left)
        .sum();
  }

  /** When the next receipt after a time may be used. */
  OptionalLong nextReceipt(String what, long min) {
    return stock.receipts().stream()
        .filter(receipt -> receipt.what().equals(what))
        .mapToLong(Receipt::usableMin)
        .filter(usable -> usable > min)
        .min();
  }
}
