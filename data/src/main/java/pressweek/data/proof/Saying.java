package pressweek.data.proof;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import pressweek.data.guide.Choice;
import pressweek.data.guide.Family;
import pressweek.data.guide.Field;
import pressweek.data.guide.Form;
import pressweek.data.guide.GuideRule;
import pressweek.data.guide.GuideRule.Clause;
import pressweek.data.guide.Part;

/**
 * Something in a guide that gives values to attributes.
 *
 * @param where field, part or rule in words
 * @param symbol the symbol; of a rule what it sets
 * @param sets values by attribute
 * @param line line of the guide
 * @param number true for one of the numbers of a range
 */
record Saying(String where, String symbol, Map<String, String> sets, int line, boolean number) {
  /** Everything in a guide that gives values. */
  static List<Saying> all(Bench bench) {
    List<Saying> all = new ArrayList<>();
    Family any = bench.guide().families().get(0);
    for (Field field : bench.guide().sheet().fields()) {
      for (Choice choice : bench.space(any).choices(field)) {
        if (!choice.symbol().isEmpty() && !(field instanceof Field.Special)) {
          boolean number = field instanceof Field.Number;
          String where = "field \"" + field.name() + '"';
          all.add(new Saying(where, choice.symbol(), choice.sets(), choice.line(), number));
        }
      }
    }
    for (Family family : bench.guide().families()) {
      for (Part part : family.parts()) {
        for (Form form : part.forms()) {
          String where = "part \"" + part.name() + '"';
          all.add(new Saying(where, form.text(), form.sets(), form.line(), false));
        }
      }
      family.rules().forEach(rule -> add(all, rule));
    }
    bench.guide().sheet().rules().forEach(rule -> add(all, rule));
    return all;
  }

  private static void add(List<Saying> all, GuideRule rule) {
    if (rule.sets()) {
      Map<String, String> sets = new LinkedHashMap<>();
      for (Clause clause : rule.what()) {
        sets.put(clause.attribute(), clause.values().get(0));
      }
      all.add(new Saying("rules", String.join(", ", sets.values()), sets, rule.line(), false));
    }
  }
}
