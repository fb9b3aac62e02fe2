package pressweek.data.proof;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import pressweek.data.guide.Choice;
import pressweek.data.guide.CodeSpace;
import pressweek.data.guide.Drawn;
import pressweek.data.guide.Family;
import pressweek.data.guide.Field;
import pressweek.data.guide.Form;
import pressweek.data.guide.Form.Slot;
import pressweek.data.guide.Part;
import pressweek.data.guide.Pin;
import pressweek.data.guide.Quest;
import pressweek.data.guide.Wish;
import pressweek.data.proof.ReadBack.Trial;

/**
 * Writes every symbol at every place at which it may stand, once with as little beside it as can be
 * and once with anything, and reads it back.
 */
final class SymbolTrial {
  private final Bench bench;
  private final ReadBack readBack;
  private final Map<Mark, Boolean> reached = new LinkedHashMap<>();
  private final Map<Mark, Integer> lines = new HashMap<>();
  private final Map<Mark, Family> homes = new HashMap<>();
  private final Map<Mark, Pin> pinned = new HashMap<>();
  private final Set<Form> formsReached = Collections.newSetFromMap(new IdentityHashMap<>());
  private final Set<Form> formsOpen = Collections.newSetFromMap(new IdentityHashMap<>());
  private final Map<Part, Boolean> optionalRead = new IdentityHashMap<>();
  private final Set<List<Object>> impossible = new HashSet<>();

  /** A symbol of a field; the symbol is empty for a number or a special as a whole. */
  private record Mark(String field, String symbol) {}

  SymbolTrial(Bench bench, ReadBack readBack) {
    this.bench = bench;
    this.readBack = readBack;
  }

  /** Optional parts none of which was ever read as itself. */
  Set<Part> neverRead() {
    Set<Part> never = Collections.newSetFromMap(new IdentityHashMap<>());
    optionalRead.forEach(
        (part, read) -> {
          if (!read) {
            never.add(part);
          }
        });
    return never;
  }

  void run() {
    for (Family family : bench.guide().families()) {
      bench.space(family).pins().forEach(pin -> pin(family, pin));
    }
    for (Part part : neverRead()) {
      bench.error(
          part.line(),
          "optional part \"%s\" is never read as itself: other parts take what it is written as"
              .formatted(part.name()));
    }
    unreachableSymbols();
    unreachableForms();
  }

  private void pin(Family family, Pin pin) {
    Part part = family.parts().get(pin.part());
    Form form = part.forms().get(pin.form());
    Optional<Mark> mark = mark(form, pin);
    mark.ifPresent(
        one -> {
          reached.putIfAbsent(one, false);
          homes.putIfAbsent(one, family);
          pinned.putIfAbsent(one, pin);
          pin.choices().values().forEach(choice -> lines.putIfAbsent(one, choice.line()));
        });
    if (impossible.contains(alike(family, pin))) {
      return;
    }
    List<Pin> pins = List.of(pin);
    List<Drawn> drawn = new ArrayList<>();
    bench.draw().good(family, new Wish(pins, true, false)).ifPresent(drawn::add);
    bench.draw().good(family, new Wish(pins, false, true)).ifPresent(drawn::add);
    if (drawn.isEmpty()) {
      search(family, pin, form).ifPresent(drawn::add);
    }
    boolean read = false;
    for (Drawn code : drawn) {
      read |= readBack.read(new Trial(code, pins));
    }
    if (!drawn.isEmpty()) {
      formsReached.add(form);
      mark.ifPresent(one -> reached.put(one, true));
      if (part.optional()) {
        optionalRead.merge(part, read, Boolean::logicalOr);
      }
    }
  }

  /** What symbols have in common which the rules cannot tell apart. */
  private List<Object> alike(Family family, Pin pin) {
    CodeSpace space = bench.space(family);
    List<Object> alike = new ArrayList<>(List.of(family.name(), pin.part(), pin.form()));
    pin.choices().forEach((piece, choice) -> alike.add(List.of(piece, space.sort(choice))));
    return alike;
  }

  /** Looks for a good code through all of the family. */
  private Optional<Drawn> search(Family family, Pin pin, Form form) {
    Bench.Answer answer = bench.find(List.of(family), Quest.goodWith(List.of(pin)));
    if (answer.none()) {
      impossible.add(alike(family, pin));
    } else if (answer.drawn().isEmpty()) {
      formsOpen.add(form);
      mark(form, pin).ifPresent(one -> reached.put(one, true));
    }
    return answer.drawn();
  }

  /** What is reached with a pin; nothing for fill characters. */
  private static Optional<Mark> mark(Form form, Pin pin) {
    return pin.choices().entrySet().stream()
        .findFirst()
        .flatMap(
            entry -> {
              Field field = ((Slot) form.pieces().get(entry.getKey())).field();
              Choice choice = entry.getValue();
              boolean table = field instanceof Field.Table;
              return choice.symbol().isEmpty()
                  ? Optional.empty()
                  : Optional.of(new Mark(field.name(), table ? choice.symbol() : ""));
            });
  }

  /** Symbols that no good code holds, told together for a field and a reason. */
  private void unreachableSymbols() {
    Map<List<String>, List<Mark>> byReason = new LinkedHashMap<>();
    reached.forEach(
        (mark, yes) -> {
          if (!yes) {
            List<String> key = List.of(mark.field(), reason(mark));
            byReason.computeIfAbsent(key, k -> new ArrayList<>()).add(mark);
          }
        });
    byReason.forEach(
        (key, marks) -> {
          List<String> symbols = marks.stream().map(Mark::symbol).toList();
          String what =
              symbols.get(0).isEmpty()
                  ? "field \"%s\"".formatted(key.get(0))
                  : "%s of \"%s\"".formatted(Bench.few(symbols), key.get(0));
          bench.warning(
              lines.getOrDefault(marks.get(0), 1),
              what + " can stand in no good code" + example(marks.get(0)));
        });
  }

  /** The code with the symbol of which the rules think best. */
  private Optional<Drawn> refused(Mark mark) {
    Family family = homes.get(mark);
    Pin pin = pinned.get(mark);
    if (family == null || pin == null) {
      return Optional.empty();
    }
    CodeSpace space = bench.space(family);
    Optional<Drawn> one =
        space.find(new Quest(List.of(pin), List.of(), false, d -> d.faults().size() == 1)).drawn();
    return one.isPresent()
        ? one
        : space.find(new Quest(List.of(pin), List.of(), false, d -> true)).drawn();
  }

  /** The reasons of the rules, which symbols of one table may have in common. */
  private String reason(Mark mark) {
    return refused(mark)
        .map(
            drawn ->
                drawn.family().rules().stream()
                    .filter(
                        rule -> drawn.faults().stream().anyMatch(f -> f.contains(rule.reason())))
                    .findFirst()
                    .map(rule -> Integer.toString(rule.line()))
                    .orElse(""))
        .orElse("");
  }

  private String example(Mark mark) {
    return refused(mark)
        .map(drawn -> ": " + bench.guide().decode(drawn.code()).faults().get(0))
        .orElse("");
  }

  private void unreachableForms() {
    Set<Form> told = Collections.newSetFromMap(new IdentityHashMap<>());
    for (Family family : bench.guide().families()) {
      for (Part part : family.parts()) {
        for (Form form : part.forms()) {
          if (!formsReached.contains(form)
              && !formsOpen.contains(form)
              && told.add(form)
              && !hasUnreachable(form)) {
            bench.warning(
                form.line(),
                "form \"%s\" of part \"%s\" can stand in no good code"
                    .formatted(form.text(), part.name()));
          }
        }
      }
    }
  }

  /** True when a field of the form is told as unreachable already. */
  private boolean hasUnreachable(Form form) {
    for (Form.Piece piece : form.pieces()) {
      if (piece instanceof Slot slot
          && reached.entrySet().stream()
              .filter(entry -> entry.getKey().field().equals(slot.field().name()))
              .noneMatch(Map.Entry::getValue)) {
        return true;
      }
    }
    return false;
  }
}
