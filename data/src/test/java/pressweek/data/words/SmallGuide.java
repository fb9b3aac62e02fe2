package pressweek.data.words;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import pressweek.data.files.JsonReader;
import pressweek.data.guide.Guide;
import pressweek.data.guide.GuideReader;

/** Small guides of plants that exist in tests only. */
final class SmallGuide {
  /** Knobs on nuts and studs, with words of every kind. */
  static final String KNOBS =
      """
      {"schema": "pressweek-guide/1", "name": "knobs", "separator": "/", "ignore_case": true,
       "fields": {
         "head": {"table": {
           "ST40": {"head_style": "star knob", "head_size_mm": "40", "words": "star knob 40 mm"},
           "ST50": {"head_style": "star knob", "head_size_mm": "50", "words": "star knob 50 mm"},
           "BL25": {"head_style": "ball knob", "head_size_mm": "25", "words": "ball knob 25 mm"},
           "BL40": {"head_style": "ball knob", "head_size_mm": "40", "words": "ball knob 40 mm"},
           "TH80": {"head_style": "tapered handle", "head_size_mm": "80"}}},
         "thread": {"table": {"M6": "M6x1", "M8": "M8x1.25", "U14": "1/4-20 UNC",
           "U516": "5/16-18 UNC", "F516": "5/16-24 UNF"}},
         "second_thread": {"table": {"M6": "M6x1", "M8": "M8x1.25"}},
         "nut": {"sets": "insert_kind", "table": {
           "B": {"insert_kind": "blind", "words": "blind nut"},
           "T": {"insert_kind": "through", "words": "through nut"}}},
         "length": {"sets": "length_mm", "number": {"unit": "mm", "min": 10, "max": 60, "step": 5}},
         "second_length": {"sets": "second_length_mm", "number": {"unit": "mm", "min": 10, "max": 40, "step": 5}},
         "resin": {"table": {"PP": {"words": "polypropylene"}, "PF": {"words": "phenolic"}}},
         "colour": {"table": {"BLK": {"words": "black"}, "WHT": {"words": "white"},
           "BRN": {"words": "brown"}, "SGR": {"words": "signal red"}, "WIN": {"words": "wine red"}}},
         "metal": {"sets": "insert_material", "table": {
           "ZN": {"insert_material": "steel", "finish": "zinc", "words": "steel, zinc plated"},
           "BX": {"insert_material": "steel", "finish": "black oxide", "words": "steel, black oxide"},
           "BR": {"insert_material": "brass", "words": "brass"},
           "A2": {"words": "A2 stainless"}, "A4": {"words": "A4 stainless"}}}},
       "parts": {
         "head": {"forms": ["{head}", {"form": "{head}-F", "sets": {"hub": "solid"}}]},
         "nut": {"forms": ["{thread}-{nut}"]},
         "stud": {"forms": [{"form": "{thread}-S{length}", "sets": {"insert_kind": "stud"}}]},
         "nut and stud": {"forms": [{"form": "{thread}-{nut}+{second_thread}-S{second_length}",
           "sets": {"second_insert_kind": "stud"}}]},
         "material": {"forms": ["{resin}-{colour}"]},
         "metal": {"forms": ["{metal}"]},
         "food": {"forms": [{"form": "FC", "sets": {"food": "yes"}}], "optional": true}},
       "families": [
         {"name": "knob on a nut", "parts": ["head", "nut", "material", "metal", "food"],
          "rules": [{"when": {"head_style": "ball knob"}, "only": {"insert_kind": "blind"},
            "because": "the crown stays closed"}]},
         {"name": "knob on a stud", "parts": ["head", "stud", "material", "metal", "food"]},
         {"name": "handle on two", "parts": ["head", "nut and stud", "material", "metal"],
          "rules": [{"only": {"head_style": "tapered handle"}, "because": "only a handle has two"}]}],
       "rules": [
         {"default": {"hub": "cored"}, "because": "heads are cored"},
         {"when": {"food": "yes"}, "only": {"insert_material": "A2|A4"}, "because": "food takes stainless"},
         {"when": {"resin": "PF"}, "only": {"colour": "BLK|BRN"}, "because": "phenolic is dark"}],
       "words": {
         "measures": [
           {"attribute": "head_size_mm", "words": ["dia", "diameter", "size", "across"]},
           {"attribute": "length_mm", "words": ["long", "length", "lg"], "after_thread": true},
           {"attribute": "second_length_mm", "words": ["long"], "after_thread": true}],
         "synonyms": [
           {"words": ["star knob", "star"], "set": {"head_style": "star knob"}},
           {"words": ["ball knob", "ball"], "set": {"head_style": "ball knob"}},
           {"words": ["tapered handle", "taper grip"], "set": {"head_style": "tapered handle"}},
           {"words": ["blind nut", "blind"], "set": {"insert_kind": "blind"}},
           {"words": ["through nut", "through", "thru"], "set": {"insert_kind": "through"}},
           {"words": ["stud", "male"], "set": {"insert_kind": "stud"}},
           {"words": ["solid hub", "solid"], "set": {"hub": "solid"}},
           {"words": ["food contact", "food grade"], "set": {"food": "yes"}},
           {"words": ["316", "316 stainless"], "set": {"insert_material": "A4"}}],
         "everyday": [
           {"words": ["stainless", "ss"], "set": {"insert_material": "A2"}, "because": "A2 is kept"},
           {"words": ["zinc", "steel", "plated"], "set": {"insert_material": "steel", "finish": "zinc"},
            "because": "steel is plated"},
           {"words": ["red"], "set": {"colour": "SGR"}, "because": "signal red is usual"},
           {"words": ["nut", "female"], "set": {"insert_kind": "blind"},
            "when": {"insert_kind": "blind|through"}, "because": "a nut is blind"}],
         "assume": [
           {"set": {"insert_kind": "blind"}, "because": "a nut is blind"},
           {"set": {"resin": "PP"}, "because": "knobs are polypropylene"},
           {"set": {"colour": "BLK"}, "because": "knobs are black"},
           {"when": {"food": "yes"}, "set": {"insert_material": "A2"}, "because": "food takes stainless"},
           {"set": {"insert_material": "steel", "finish": "zinc"}, "because": "inserts are zinc plated"}],
         "ignore": ["knob", "handle", "thread", "with", "and", "please", "in"]}}
      """;

  /** Inch sizes, no separator, an option that may be a colour or a finish by the same word. */
  static final String INCHES =
      """
      {"schema": "pressweek-guide/1", "name": "inches", "separator": "", "ignore_case": false,
       "fields": {
         "head": {"width": 2, "table": {
           "R1": {"head_style": "round knob", "head_size_in": "1"},
           "R2": {"head_style": "round knob", "head_size_in": "1.5"},
           "W2": {"head_style": "wing knob", "head_size_in": "1.5"},
           "W3": {"head_style": "wing knob", "head_size_in": "2.25"}}},
         "thread": {"width": 1, "table": {"4": "1/4-20 UNC", "5": "5/16-18 UNC", "8": "M8x1.25"}},
         "finish": {"width": 1, "fill": {"none": "-"}, "table": {
           "B": {"finish": "black", "words": "black"}, "Z": {"finish": "zinc", "words": "zinc"}}},
         "colour": {"width": 1, "table": {
           "B": {"colour": "black", "words": "black"}, "G": {"colour": "grey", "words": "grey"}}}},
       "parts": {"all": {"forms": ["{head}{thread}{finish}{colour}"]}},
       "families": [{"name": "knob", "parts": ["all"]}],
       "words": {
         "measures": [{"attribute": "head_size_in", "words": ["dia", "wide"]}],
         "synonyms": [
           {"words": ["round knob", "round"], "set": {"head_style": "round knob"}},
           {"words": ["wing knob", "wing", "butterfly"], "set": {"head_style": "wing knob"}}],
         "assume": [{"set": {"finish": "zinc"}, "because": "inserts are plated"}],
         "ignore": ["knob", "thread"]}}
      """;

  private SmallGuide() {}

  static Guide of(String json) {
    try {
      GuideReader.Result read =
          GuideReader.read(
              JsonReader.read("guide.json", new StringReader(json)).object().orElseThrow());
      return read.guide().orElseThrow(() -> new IllegalArgumentException("" + read.findings()));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static WordReader reader(String json) {
    return new WordReader(of(json));
  }
}
