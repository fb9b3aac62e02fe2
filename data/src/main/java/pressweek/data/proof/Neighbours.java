package pressweek.data.proof;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import pressweek.data.guide.Choice;
import pressweek.data.guide.CodeSpace;
import pressweek.data.guide.Drawn;
import pressweek.data.guide.Family;
import pressweek.data.guide.Field;
import pressweek.data.guide.Form;
import pressweek.data.guide.Form.Slot;
import pressweek.data.guide.Pin;
import pressweek.data.guide.Wish;
import pressweek.data.proof.ReadBack.Trial;

/**
 * Writes pairs of symbols that follow each other without a break and could be cut in another place:
 * {@code AB} and {@code C}, where {@code A} and {@code BC} are symbols, too.
 */
final class Neighbours {
  /** Pairs written for two neighbouring fields; more of them show nothing new. */
  private static final int MOST_PAIRS = 200;

  private static final int SOME = 4;

  private final Bench bench;
  private final ReadBack readBack;

  /** A field at its place. */
  private record Spot(int part, int form, int piece, Slot slot) {}

  Neighbours(Bench bench, ReadBack readBack) {
    this.bench = bench;
    this.readBack = readBack;
  }

  void run() {
    for (Family family : bench.guide().families()) {
      for (List<Spot> pair : pairs(family)) {
        pair(family, pair.get(0), pair.get(1));
      }
    }
  }

  /** Fields between which nothing stands. */
  private List<List<Spot>> pairs(Family family) {
    List<List<Spot>> pairs = new ArrayList<>();
    boolean separated = !bench.guide().sheet().separator().isEmpty();
    for (int part = 0; part < family.parts().size(); part++) {
      List<Form> forms = family.parts().get(part).forms();
      for (int form = 0; form < forms.size(); form++) {
        for (int piece = 0; piece + 1 < forms.get(form).pieces().size(); piece++) {
          add(pairs, spot(family, part, form, piece), spot(family, part, form, piece + 1));
        }
        if (!separated) {
          int last = forms.get(form).pieces().size() - 1;
          Optional<Spot> end = spot(family, part, form, last);
          followers(family, part).forEach(next -> add(pairs, end, Optional.of(next)));
        }
      }
    }
    return pairs;
  }

  private static void add(List<List<Spot>> pairs, Optional<Spot> one, Optional<Spot> next) {
    if (one.isPresent() && next.isPresent()) {
      pairs.add(List.of(one.get(), next.get()));
    }
  }

  private static Optional<Spot> spot(Family family, int part, int form, int piece) {
    Form.Piece at = family.parts().get(part).forms().get(form).pieces().get(piece);
    return at instanceof Slot slot
        ? Optional.of(new Spot(part, form, piece, slot))
        : Optional.empty();
  }

  /** The fields that may come first behind a part. */
  private static List<Spot> followers(Family family, int part) {
    List<Spot> followers = new ArrayList<>();
    int from = family.parts().get(part).repeat() > 1 ? part : part + 1;
    for (int next = from; next < family.parts().size(); next++) {
      for (int form = 0; form < family.parts().get(next).forms().size(); form++) {
        spot(family, next, form, 0).ifPresent(followers::add);
      }
      if (next > part && !family.parts().get(next).optional()) {
        break;
      }
    }
    return followers;
  }

  private void pair(Family family, Spot one, Spot next) {
    CodeSpace space = bench.space(family);
    List<Choice> firsts = space.choices(one.slot().field());
    List<Choice> seconds = space.choices(next.slot().field());
    Map<String, Choice> first = byText(firsts);
    Map<String, Choice> second = byText(seconds);
    int tried = 0;
    for (Map.Entry<String, Choice> longer : first.entrySet()) {
      for (int cut = 1; cut < longer.getKey().length() && tried < MOST_PAIRS; cut++) {
        Choice shorter = first.get(longer.getKey().substring(0, cut));
        if (shorter != null) {
          String rest = longer.getKey().substring(cut);
          if (second.containsKey(rest)) {
            write(family, List.of(one, next), List.of(shorter, second.getOrDefault(rest, shorter)));
            tried++;
          }
          for (Map.Entry<String, Choice> b : second.entrySet()) {
            Choice whole = second.get(rest + b.getKey());
            if (whole != null && tried < MOST_PAIRS) {
              write(family, List.of(one, next), List.of(longer.getValue(), b.getValue()));
              write(family, List.of(one, next), List.of(shorter, whole));
              tried += 2;
            }
          }
        }
      }
    }
    if (one.slot().field() instanceof Field.Number) {
      digits(family, List.of(one, next), firsts, seconds);
    }
  }

  /** A number takes all the digits that follow it. */
  private void digits(Family family, List<Spot> spots, List<Choice> firsts, List<Choice> seconds) {
    List<Choice> digits =
        seconds.stream()
            .filter(
                choice -> !choice.text().isEmpty() && Character.isDigit(choice.text().charAt(0)))
            .limit(MOST_PAIRS / SOME)
            .toList();
    for (Choice number : firsts.subList(0, Math.min(SOME, firsts.size()))) {
      digits.forEach(choice -> write(family, spots, List.of(number, choice)));
    }
  }

  private Map<String, Choice> byText(List<Choice> choices) {
    Map<String, Choice> byText = new TreeMap<>();
    for (Choice choice : choices) {
      boolean fold = bench.guide().ignoreCase();
      byText.putIfAbsent(fold ? choice.text().toUpperCase(Locale.ROOT) : choice.text(), choice);
    }
    return byText;
  }

  private void write(Family family, List<Spot> spots, List<Choice> choices) {
    Spot one = spots.get(0);
    Spot next = spots.get(1);
    List<Pin> pins = new ArrayList<>();
    if (one.part() == next.part() && one.piece() < next.piece()) {
      Map<Integer, Choice> both = new HashMap<>();
      both.put(one.piece(), choices.get(0));
      both.put(next.piece(), choices.get(1));
      pins.add(new Pin(one.part(), one.form(), both));
    } else {
      pins.add(new Pin(one.part(), one.form(), Map.of(one.piece(), choices.get(0))));
      pins.add(new Pin(next.part(), next.form(), Map.of(next.piece(), choices.get(1))));
    }
    Optional<Drawn> drawn = bench.draw().good(family, new Wish(pins, true, false));
    drawn.ifPresent(code -> readBack.read(new Trial(code, pins)));
  }
}
