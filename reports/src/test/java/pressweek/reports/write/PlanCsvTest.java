package pressweek.reports.write;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.StringReader;
import java.util.List;
import java.util.Map;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import pressweek.data.plan.Cause;
import pressweek.data.plan.ChangeKind;
import pressweek.data.plan.Wait;
import pressweek.data.problem.Setup;
import pressweek.data.problem.Unplaced;
import pressweek.reports.sample.Hostile;
import pressweek.reports.sample.SamplePlan;
import pressweek.reports.sample.SampleWeek;
import pressweek.reports.sample.SmallPlan;

class PlanCsvTest {
  private static final String MONDAY = "2026-11-30T";

  private static SmallPlan plan() {
    Setup black = new Setup("M2", "", "PP", "BLK");
    Setup red = new Setup("M1", "", "PP", "SGR");
    SmallPlan plan =
        new SmallPlan()
            .job("4711", "V1", MONDAY + "10:00")
            .run(
                "R1",
                "4711/1",
                "V1",
                SmallPlan.change(
                    List.of(ChangeKind.MOLD, ChangeKind.COLOUR),
                    black,
                    red,
                    MONDAY + "08:00",
                    MONDAY + "08:40"),
                List.of(SampleWeek.at(MONDAY + "08:40"), SampleWeek.at(MONDAY + "12:00")))
            .because(
                List.of(
                    new Wait(
                        Cause.SETTER,
                        "",
                        SampleWeek.at(MONDAY + "06:00"),
                        SampleWeek.at(MONDAY + "08:00"))),
                List.of())
            .pull("R1", "V1", MONDAY + "08:10", "S0825");
    plan.unplaced.add(
        new Unplaced("4712", "1", "LV90/X", 10, "no mold makes it", "add one, or ask"));
    return plan;
  }

  private static List<CSVRecord> records(String csv) throws IOException {
    return CSVFormat.RFC4180
        .builder()
        .setHeader()
        .setSkipHeaderRecord(true)
        .get()
        .parse(new StringReader(csv))
        .getRecords();
  }

  @Test
  void filesAreTheLists() {
    assertThat(PlanCsv.files(plan().plan()).keySet())
        .containsExactly(
            "schedule.csv",
            "pulls.csv",
            "shortages.csv",
            "changes.csv",
            "unplaced.csv",
            "handover.csv");
  }

  @Test
  void scheduleRowIsWritten() {
    assertThat(PlanCsv.files(plan().plan()).get("schedule.csv"))
        .isEqualTo(
            "run,press,seq,order,line,item,mold,resin,colour,insert,quantity,shots,change_start,"
                + "run_start,run_end,due,late_min,change_min,change_kind,waits_for,ready,stays,"
                + "tooling,customer,note\r\n"
                + "R1,V1,1,4711,1,LV90/S0825/PP-BLK,M1,PP,BLK,S0825,500,135,"
                + "2026-11-30T08:00+01:00,2026-11-30T08:40+01:00,2026-11-30T12:00+01:00,"
                + "2026-11-30T10:00+01:00,120,40,mold|colour,no setter free 120 min,"
                + "2026-11-30T12:00+01:00,,,Harbour Fittings,\r\n");
  }

  @Test
  void pullRowIsWritten() {
    assertThat(PlanCsv.files(plan().plan()).get("pulls.csv"))
        .isEqualTo(
            "need_by,shift,press,run,order,line,insert,words,thread,bin,lot,pieces,caution,kind,unit\r\n"
                + "2026-11-30T08:10+01:00,2026-11-30 early,V1,R1,4711,1,S0825,"
                + "\"stud, M8x1.25, 25 mm, steel, zinc trivalent\",M8x1.25,C1-2,L1,540,,insert,pcs\r\n");
  }

  @Test
  void changeRowIsWritten() {
    assertThat(PlanCsv.files(plan().plan()).get("changes.csv"))
        .isEqualTo(
            "start,end,press,setter_shift,mold_out,mold_in,kind,purge_kg,minutes,run,tooling_out,"
                + "tooling_in,resin_out,resin_in,colour_out,colour_in,stays\r\n"
                + "2026-11-30T08:00+01:00,2026-11-30T08:40+01:00,V1,2026-11-30 early,M2,M1,"
                + "mold|colour,0.375,40,R1,,,PP,PP,BLK,SGR,resin PP\r\n");
  }

  @Test
  void unplacedRowIsWritten() {
    assertThat(PlanCsv.files(plan().plan()).get("unplaced.csv"))
        .isEqualTo(
            "order,line,item,reason,cure,pieces\r\n"
                + "4712,1,LV90/X,no mold makes it,\"add one, or ask\",10\r\n");
  }

  @Test
  void emptyPlanHasHeadersOnly() {
    PlanCsv.files(SamplePlan.empty())
        .forEach((name, csv) -> assertThat(csv.split("\r\n")).as(name).hasSize(1));
  }

  @Test
  void noCellIsAFormulaWhateverTheFieldsHold() throws IOException {
    for (String hostile : List.of("=", "+", "-", "@", "\t", "\r\n", "'=", "\",\n=")) {
      Map<String, String> files = PlanCsv.files(Hostile.of(plan().plan(), hostile));
      for (Map.Entry<String, String> file : files.entrySet()) {
        for (CSVRecord row : records(file.getValue())) {
          assertThat(row.isConsistent()).as(file.getKey()).isTrue();
          assertThat(row.stream())
              .noneMatch(c -> c.matches("(?s)[=+\\-@\\t\\r\\n].*") && !c.matches("[+-]\\d+"));
        }
      }
    }
  }

  @Test
  void guardedTextIsReadBackWithoutItsApostrophe() throws IOException {
    Map<String, String> files = PlanCsv.files(Hostile.of(plan().plan(), "=\"a\",\r\n"));
    CSVRecord row = records(files.get("unplaced.csv")).get(0);
    assertThat(row.get("reason")).isEqualTo("'=\"a\",\r\nno mold makes it");
  }
}
