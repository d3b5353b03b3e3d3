package loamline.files;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import loamline.account.Problem;
import loamline.findings.LogRow;
import loamline.findings.Quantity;
import loamline.findings.SoilLayer;
import org.junit.jupiter.api.Test;

class LogFileTest {
    private static final double TINY = 1e-12;

    private static LogRow row(String header, String cells) {
        Read<List<LogRow>> read = LogFile.parse(header + "\n" + cells);
        assertThat(read.problems()).isEmpty();
        return read.value().orElseThrow().get(0);
    }

    private static List<String> codes(String text) {
        return LogFile.parse(text).problems().stream().map(Problem::code).toList();
    }

    @Test
    void aWholeRowIsReadInMetresAndKilopascals() {
        LogRow row = row(
                "core,time,depth_cm,refusal,root_cm,thatch_mm,topsoil_cm,moisture,vwc_pct,psi,wdpt_s,colour,quality,layers,note",
                "A1,2027-05-12T09:30,15,,9,13,12,moist,24,200,4,dark brown,7,0-5 loam;5-9 sand;9-15 clay,fine");
        assertThat(row.day()).hasToString("Optional[2027-05-12]");
        assertThat(row.values().get(Quantity.ROOT)).isCloseTo(0.09, within(TINY));
        assertThat(row.values().get(Quantity.THATCH)).isCloseTo(0.013, within(TINY));
        assertThat(row.values().get(Quantity.MOISTURE)).isEqualTo(3);
        assertThat(row.values().get(Quantity.HARDNESS)).isCloseTo(1378.95, within(0.01));
        assertThat(row.layers()).extracting(SoilLayer::texture).containsExactly("loam", "sand", "clay");
        assertThat(row.refusal()).isEmpty();
    }

    @Test
    void inchesAreRead() {
        LogRow row = row("core,depth_in,root_in,thatch_in,layers_in", "A1,6,2,0.5,0-2 loam;2-6 clay loam");
        assertThat(row.values().get(Quantity.ROOT)).isCloseTo(0.0508, within(TINY));
        assertThat(row.values().get(Quantity.THATCH)).isCloseTo(0.0127, within(TINY));
        assertThat(row.layers().get(1).toM()).isCloseTo(0.1524, within(TINY));
    }

    @Test
    void blanksAreAbsentAndNeverZero() {
        LogRow row = row("core,depth_cm,refusal,root_cm,quality,layers", "A1,,,,,");
        assertThat(row.values()).isEmpty();
        assertThat(row.layers()).isEmpty();
    }

    @Test
    void aRefusalMayBeAWordOrJustAYesAndANoIsNone() {
        assertThat(row("core,refusal", "A1,stone").refusal()).hasValue("stone");
        assertThat(row("core,refusal", "A1,Yes").refusal()).hasValue("refused");
        assertThat(row("core,refusal", "A1,no").refusal()).isEmpty();
    }

    @Test
    void aBadRowIsListedWithItsLineAndTheOthersAreRead() {
        String text = "core,root_cm,layers,quality\nA1,9,,7\nA2,ten,5-2 loam,12\nA3,8,,6\n";
        Read<List<LogRow>> read = LogFile.parse(text);
        assertThat(read.value().orElseThrow()).extracting(LogRow::core).containsExactly("A1", "A3");
        assertThat(read.problems()).hasSize(3).allMatch(p -> p.where().suffix().equals(":3"));
    }

    @Test
    void aDepthThatCannotBeIsAWrongUnit() {
        assertThat(codes("core,root_cm\nA1,900\n")).contains("LOG_IMPLAUSIBLE");
    }

    @Test
    void semicolonsAndCommasAsDecimalPointsAreRead() {
        LogRow row = row("core;root_cm;thatch_mm", "A1;9,5;12,5");
        assertThat(row.values().get(Quantity.ROOT)).isCloseTo(0.095, within(TINY));
    }

    @Test
    void photosAreNamesOfFilesAndTheirColumnIsWrittenOnlyIfThereAreAny() {
        LogRow row = row("core,Photo", "A1,\"IMG_1.jpg; roots/IMG_2.jpg\"");
        assertThat(row.photos()).containsExactly("IMG_1.jpg", "roots/IMG_2.jpg");
        assertThat(row.others()).isEmpty();
        String written = LogFile.text(List.of(row));
        assertThat(written.lines().findFirst()).hasValue(String.join(",", LogFile.HEADER) + ",photo");
        assertThat(LogFile.parse(written).value().orElseThrow().get(0).photos()).isEqualTo(row.photos());
        assertThat(LogFile.text(List.of(row("core,photo", "A1,"))).lines().findFirst())
                .hasValue(String.join(",", LogFile.HEADER));
    }

    @Test
    void anEmptyLogSaysSo() {
        assertThat(codes("core,root_cm\n")).containsExactly("LOG_EMPTY");
    }

    @Test
    void whatIsWrittenIsReadBackTheSame() {
        String text = "core,time,depth_cm,root_in,moisture,psi,layers,note,mine\n"
                + "A1,2027-05-12,15,3.5,wet,180,\"0-5 loam;5-9 sand\",\"a, \"\"b\"\"\",x\nA2,,,,,,,,\n";
        List<LogRow> rows = LogFile.parse(text).value().orElseThrow();
        String written = LogFile.text(rows);
        assertThat(LogFile.text(LogFile.parse(written).value().orElseThrow())).isEqualTo(written);
        assertThat(written.lines().skip(1)).first().asString().contains("15,,8.89,", "wet", ",180,", ",x");
    }
}
