package pressweek.data.words;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.Iterator;
import java.util.List;
import java.util.NoSuchElementException;
import java.util.PriorityQueue;
import java.util.Set;

/** The choices of one sense for each mention, the least doubtful first. */
final class SenseChoices implements Iterator<SenseChoices.Choice> {
  private final List<List<Sense>> senses = new ArrayList<>();
  private final PriorityQueue<State> queue =
      new PriorityQueue<>(Comparator.comparingInt(State::cost).thenComparingInt(State::number));
  private final Set<List<Integer>> seen = new HashSet<>();
  private int made;

  /** A choice with its doubt. */
  record Choice(List<Claim> claims, int cost) {}

  /** A choice by the place of each sense, and when it was thought of. */
  private record State(List<Integer> picks, int cost, int number) {}

  SenseChoices(List<Mention> mentions) {
    List<Integer> first = new ArrayList<>();
    int cost = 0;
    for (Mention mention : mentions) {
      List<Sense> sorted = new ArrayList<>(mention.senses());
      sorted.sort(Comparator.comparingInt(Sense::cost));
      senses.add(sorted);
      first.add(0);
      cost += sorted.get(0).cost();
    }
    add(first, cost);
  }

  private void add(List<Integer> picks, int cost) {
    if (seen.add(picks)) {
      queue.add(new State(picks, cost, made++));
    }
  }

  @Override
  public boolean hasNext() {
    return !queue.isEmpty();
  }

  @Override
  public Choice next() {
    State state = queue.poll();
    if (state == null) {
      throw new NoSuchElementException();
    }
    List<Claim> claims = new ArrayList<>();
    for (int i = 0; i < senses.size(); i++) {
      int pick = state.picks().get(i);
      List<Sense> own = senses.get(i);
      claims.add(own.get(pick).claim());
      if (pick + 1 < own.size()) {
        List<Integer> next = new ArrayList<>(state.picks());
        next.set(i, pick + 1);
        add(next, state.cost() - own.get(pick).cost() + own.get(pick + 1).cost());
      }
    }
    return new Choice(claims, state.cost());
  }
}
