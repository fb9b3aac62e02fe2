package pressweek.reports.guide;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import pressweek.data.guide.Choice;
import pressweek.data.guide.Field;
import pressweek.data.guide.Guide;
import pressweek.data.problem.Item;
import pressweek.data.thread.ThreadSize;

/** Symbols of a guide that are easily taken for each other. */
final class MixUps {
  private static final int MOST = 10;

  /** Signs that look alike in most letters and in handwriting; common practice, no source. */
  private static final String LOOK = "OQDI1LZ2S5B8G6UV";

  private static final String ALIKE = "000111225588GGUU";

  private final Guide guide;
  private final Phrasebook words;

  MixUps(Guide guide, Phrasebook words) {
    this.guide = guide;
    this.words = words;
  }

  /** Each in a sentence; the first few. */
  List<String> sentences() {
    List<String> sentences = new ArrayList<>(oneSymbolTwoFields());
    for (Field field : guide.sheet().fields()) {
      if (field instanceof Field.Table table) {
        sentences.addAll(threads(table));
        sentences.addAll(lookAlikes(table));
      }
    }
    return sentences.subList(0, Math.min(MOST, sentences.size()));
  }

  /** A symbol that means one thing here and another there. */
  private List<String> oneSymbolTwoFields() {
    Map<String, Map<String, String>> meanings = new LinkedHashMap<>();
    for (Field field : guide.sheet().fields()) {
      if (field instanceof Field.Table table) {
        table
            .entries()
            .forEach(
                (symbol, entry) ->
                    meanings
                        .computeIfAbsent(symbol, k -> new LinkedHashMap<>())
                        .putIfAbsent(meaning(table, symbol), Phrasebook.plain(field.name())));
      }
    }
    List<String> sentences = new ArrayList<>();
    meanings.forEach(
        (symbol, fields) -> {
          if (fields.size() > 1) {
            List<String> each = new ArrayList<>();
            fields.forEach((means, field) -> each.add(means + " as " + field));
            sentences.add(symbol + " is " + String.join(", ", each));
          }
        });
    return sentences;
  }

  private String meaning(Field.Table table, String symbol) {
    Map<String, String> sets =
        table.entries().containsKey(symbol) ? table.entries().get(symbol).sets() : Map.of();
    return words.underItsField(table, new Choice(symbol, symbol, sets, 0));
  }

  /** Threads that look alike; those of a second insert are the same ones. */
  private static List<String> threads(Field.Table table) {
    List<NamedThread> threads = new ArrayList<>();
    table
        .entries()
        .forEach(
            (symbol, entry) -> {
              String thread = entry.sets().getOrDefault(Item.THREAD, "");
              ThreadSize.read(thread)
                  .ifPresent(size -> threads.add(new NamedThread(symbol, thread, size)));
            });
    List<String> sentences = new ArrayList<>();
    for (int i = 0; i < threads.size(); i++) {
      for (NamedThread other : threads.subList(i + 1, threads.size())) {
        if (threads.get(i).size().looksLike(other.size())) {
          sentences.add(threads.get(i) + " looks like " + other + ": check with the thread gauge");
        }
      }
    }
    return sentences;
  }

  /** A symbol with the thread that it means. */
  private record NamedThread(String symbol, String thread, ThreadSize size) {
    @Override
    public String toString() {
      return symbol + " (" + thread + ")";
    }
  }

  private List<String> lookAlikes(Field.Table table) {
    List<String> sentences = new ArrayList<>();
    List<String> symbols = List.copyOf(table.entries().keySet());
    for (int i = 0; i < symbols.size(); i++) {
      for (int j = i + 1; j < symbols.size() && sentences.size() < MOST; j++) {
        String one = symbols.get(i);
        String other = symbols.get(j);
        if (look(one).equals(look(other)) || swapped(one, other)) {
          sentences.add(
              "%s is %s, %s is %s"
                  .formatted(one, meaning(table, one), other, meaning(table, other)));
        }
      }
    }
    return sentences;
  }

  private static String look(String symbol) {
    StringBuilder look = new StringBuilder();
    for (char c : symbol.toUpperCase(Locale.ROOT).toCharArray()) {
      int at = LOOK.indexOf(c);
      look.append(at < 0 ? c : ALIKE.charAt(at));
    }
    return look.toString();
  }

  /** True when two letters beside each other have changed places. */
  private static boolean swapped(String one, String other) {
    if (one.length() != other.length() || one.length() < 2) {
      return false;
    }
    int at = 0;
    while (at < one.length() - 1 && one.charAt(at) == other.charAt(at)) {
      at++;
    }
    return at < one.length() - 1
        && one.charAt(at) == other.charAt(at + 1)
        && one.charAt(at + 1) == other.charAt(at)
        && one.substring(at + 2).equals(other.substring(at + 2));
  }
}
