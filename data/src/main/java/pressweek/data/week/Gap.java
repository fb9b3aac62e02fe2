package pressweek.data.week;

/** What can go unchecked, or rest on an estimate, for want of data. */
enum Gap {
  RESIN(
      "resin and colour changes: the order line names no resin or no colour",
      "orders.csv resin, colour, or guide.json"),
  INSERT_PARTS(
      "which insert part an item takes", "inserts.csv, and guide.json or orders.csv insert"),
  INSERT_STOCK("whether inserts are in the house in time", "lots.csv"),
  COMPONENT_STOCK(
      "whether tips, cartons and labels are in the house in time: some have neither lot nor receipt",
      "lots.csv"),
  CYCLE("cycles are estimates, not recorded ones", "standards.csv"),
  CLAMP_MOLD("clamp force: the mold's projected area is not known", "molds.csv part_area_cm2"),
  CLAMP_PRESS("clamp force: the press's is not known", "presses.csv clamp_kn"),
  CLAMP_RESIN("clamp force: an average cavity pressure is used", "resins.csv cavity_kn_cm2"),
  SHOT_MOLD("shot against barrel: the mold's shot weight is not known", "molds.csv part_g"),
  SHOT_PRESS("shot against barrel: the press's is not known", "presses.csv shot_ps_g"),
  SHOT_RESIN("shot against barrel: the resin's density is not known", "resins.csv density"),
  SIZE_MOLD(
      "whether the mold goes between the tie bars and platens: its size is not known",
      "molds.csv length_mm, width_mm, height_mm"),
  SIZE_PRESS(
      "whether the mold goes between the tie bars and platens: the press's are not known",
      "presses.csv tie_bar_x_mm, tie_bar_y_mm, mold_min_mm, mold_max_mm"),
  OPENING_MOLD("whether the press opens wide enough for the mold", "molds.csv opening_mm"),
  OPENING_PRESS("whether the press opens wide enough", "presses.csv opening_mm"),
  COLOUR("colour change minutes: a lightness is not known", "colours.csv"),
  MELT("resin change minutes: a melt temperature is not known", "resins.csv melt_c"),
  DRYING(
      "whether resins are dry in time; dryers are not planned",
      "drying by hand (resins.csv dry_h says how long)"),
  UNDRIED("whether resins are dry in time on presses that no dryer feeds", "dryers.csv feeds"),
  DEVICES(
      "whether devices (controllers, heaters, grippers) are free: they are not counted",
      "tooling.csv"),
  SERVICE(
      "whether molds are due for service: the shots between two services are not known",
      "molds.csv service_shots"),
  PLASTIC_GRAMS(
      "what resin and masterbatch a run takes: a part weight or let-down is not known",
      "molds.csv part_g, colours.csv let_down_pct"),
  PLASTIC_STOCK(
      "whether resin and masterbatch are in the house in time: some have neither lot nor receipt",
      "lots.csv weight_kg"),
  SETTERS("whether setters are there for the changes", "plant.json shifts: setters"),
  OPERATORS("whether operators are there for hand loading", "plant.json shifts: operators"),
  RATES("money: the plan ranks by default weights and hides it", "plant.json rates"),
  ESTIMATES("efficiency, scrap or change minutes are default estimates", "plant.json");

  private final String what;
  private final String add;

  Gap(String what, String add) {
    this.what = what;
    this.add = add;
  }

  String what() {
    return what;
  }

  String add() {
    return add;
  }
}
