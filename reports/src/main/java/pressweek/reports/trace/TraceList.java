package pressweek.reports.trace;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import pressweek.data.declared.Needs;
import pressweek.data.declared.Subject;
import pressweek.data.declared.SupplierPaper;
import pressweek.data.problem.Declaration;
import pressweek.reports.hours.PlantClock;
import pressweek.reports.listing.Listing;
import pressweek.reports.listing.ListingColumns;
import pressweek.reports.listing.Paper;
import pressweek.reports.schedule.PlanBook;

/** The trace sheet as a list. */
public final class TraceList {
  private static final String WRITE =
      "Write down what is loaded; another lot within a run begins a new row and a lot of its own.";
  private static final String FOOD =
      " Food: EC 1935/2004, Art. 17 asks whence each lot came and where it went";
  private static final String OLEFIN = "; olefins: 21 CFR 177.1520, by the supplier's paper";
  private static final String RESTRICTED = " RoHS: Directive 2011/65/EU, Annex II.";
  private static final String NEVER =
      " Pressweek never certifies: the suppliers and whoever releases the lot do.";

  private TraceList() {}

  /** A row a material, lot and need; what is used, by whom, and the first article by hand. */
  public static Listing of(PlanBook book) {
    PlantClock clock = book.clock();
    List<TraceRow> rows = TraceReport.rows(book);
    return declared(lots(new ListingColumns<TraceRow>(), clock), clock)
        .text("lot_used", r -> "")
        .text("operator", r -> "")
        .text("first_article", r -> "")
        .listing(
            "trace",
            "Lot trace",
            new Paper(caution(rows), "run", false, "No run asks for a trace."),
            rows);
  }

  private static ListingColumns<TraceRow> lots(ListingColumns<TraceRow> columns, PlantClock clock) {
    return columns
        .text("run", r -> r.run().id())
        .text("order", r -> r.job().line().order())
        .text("line", r -> r.job().line().line())
        .text("customer", r -> r.job().line().customer())
        .offPaper()
        .text("item", r -> r.job().line().item())
        .offPaper()
        .text("press", r -> r.run().press())
        .text("mold", r -> r.run().mold())
        .time("run_start", r -> clock.at(r.run().startMin()))
        .time("run_end", r -> clock.at(r.run().endMin()))
        .offPaper()
        .text("material", r -> r.subject().words())
        .text("lot", r -> r.source().lot())
        .text("bin", r -> r.source().bin())
        .numberIfAny("pieces", TraceList::pieces)
        .thousandthsIfAny("kg", TraceList::grams)
        .text("lot_certificate", r -> r.source().paper())
        .text("note", r -> r.source().note());
  }

  private static ListingColumns<TraceRow> declared(
      ListingColumns<TraceRow> columns, PlantClock clock) {
    return columns
        .text("need", TraceRow::need)
        .text("record", r -> said(r, Declaration::source))
        .text("certificate", r -> said(r, Declaration::certificate))
        .text("declared", r -> said(r, d -> d.issued().map(Object::toString).orElse("")))
        .offPaper()
        .timeIfAny(
            "expires",
            r ->
                r.declaration()
                    .filter(d -> d.expiresMin().isPresent())
                    .map(d -> clock.at(d.expiresMin().getAsInt())))
        .text("exemption", r -> said(r, Declaration::exemption));
  }

  private static String said(TraceRow row, Function<Declaration, String> what) {
    return row.declaration().map(what).orElse("");
  }

  private static boolean weighed(TraceRow row) {
    return switch (row.subject().kind()) {
      case RESIN, COLOUR -> true;
      case INSERT, TIP -> false;
    };
  }

  private static Optional<Integer> pieces(TraceRow row) {
    return weighed(row) ? Optional.empty() : row.source().amount();
  }

  private static Optional<Integer> grams(TraceRow row) {
    return weighed(row) ? row.source().amount() : Optional.empty();
  }

  /** What to mind, with the rules on which these rows lean. */
  static String caution(List<TraceRow> rows) {
    boolean food = rows.stream().anyMatch(r -> r.need().equals(Needs.FOOD));
    boolean olefin =
        rows.stream()
            .filter(r -> r.need().equals(Needs.FOOD))
            .map(TraceRow::subject)
            .anyMatch(s -> s.kind() == Subject.Kind.RESIN && SupplierPaper.isOlefin(s.id()));
    boolean restricted = rows.stream().anyMatch(r -> r.need().equals(Needs.ROHS));
    return WRITE
        + (food ? FOOD + (olefin ? OLEFIN : "") + "." : "")
        + (restricted ? RESTRICTED : "")
        + NEVER;
  }
}
