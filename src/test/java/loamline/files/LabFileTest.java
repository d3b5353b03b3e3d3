package loamline.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import loamline.account.Problem;
import loamline.reference.SoilTables;
import loamline.soil.Element;
import loamline.soil.Extractant;
import loamline.soil.LabMethod;
import loamline.soil.LabUnit;
import loamline.soil.LabValue;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class LabFileTest {
    private static LabFile parse(String text) {
        return LabFile.parse(text.getBytes(StandardCharsets.UTF_8));
    }

    private static List<String> lines(List<Problem> problems) {
        return problems.stream().map(p -> p.line("lab.csv")).toList();
    }

    @Test
    void aRowBecomesAValueWithAllThatIsKnownOfIt() {
        LabFile file = parse("sample,zones,element,value,unit,extractant,depth_cm,method,lab,date\n"
                + "A,Front west+Front east,P,17,ppm,M3,10.16,,Thistlewick,2027-04-12\n");
        assertThat(file.problems()).isEmpty();
        LabValue value = file.values().get(0);
        assertThat(value.zones()).containsExactly("Front west", "Front east");
        assertThat(value.element()).isEqualTo(Element.P);
        assertThat(value.unit()).contains(LabUnit.PPM);
        assertThat(value.extractant()).contains(Extractant.MEHLICH_3);
        assertThat(value.made().depthM().orElseThrow())
                .isEqualTo(0.1016, org.assertj.core.api.Assertions.within(1e-12));
        assertThat(value.date()).contains(LocalDate.of(2027, 4, 12));
        assertThat(value.line()).isEqualTo(2);
    }

    @Test
    void namesAreUnderstoodInTheWaysThatLaboratoriesWriteThem() {
        LabFile file = parse("Sample;Element;Value;Unit;Extractant;Depth_in;Method\n"
                + "A;buffer pH;6,6;;;4;SMP buffer\n"
                + "A;k;0,42;cmol(+)/kg;Mehlich III;4;\n"
                + "A;CA;2.150,5;mg kg⁻¹;NH4OAc;4;\n"
                + "A;organic matter;29;g/kg;;4;\n"
                + "A;pH;5,2;;;4;0.01 M CaCl2\n");
        assertThat(file.problems()).isEmpty();
        List<LabValue> values = file.values();
        assertThat(values.get(0).method()).contains(LabMethod.SMP);
        assertThat(values.get(1).unit()).contains(LabUnit.MEQ_100G);
        assertThat(values.get(1).extractant()).contains(Extractant.MEHLICH_3);
        assertThat(values.get(2).value()).isEqualTo(2150.5);
        assertThat(values.get(2).unit()).contains(LabUnit.PPM);
        assertThat(values.get(2).extractant()).contains(Extractant.AMMONIUM_ACETATE);
        assertThat(values.get(3).unit()).contains(LabUnit.G_KG);
        assertThat(values.get(4).method()).contains(LabMethod.SALT);
        assertThat(values.get(4).made().depthM().orElseThrow()).isEqualTo(0.1016);
    }

    @Test
    void badRowsAreListedWithLineAndColumnAndGoodOnesRead() {
        LabFile file = parse("sample,element,value,unit\n"
                + "A,P,trace,ppm\n"
                + "A,Unobtainium,3,ppm\n"
                + ",K,3,ppm\n"
                + "A,K,60,ppm\n");
        assertThat(file.values()).hasSize(1);
        assertThat(lines(file.problems()))
                .hasSize(3)
                .anyMatch(l -> l.startsWith("error lab.csv:2 CSV_CELL_BAD value"))
                .anyMatch(l -> l.startsWith("error lab.csv:3 CSV_CELL_BAD element"))
                .anyMatch(l -> l.startsWith("error lab.csv:4 CSV_CELL_EMPTY sample"));
    }

    @TempDir
    private Path folder;

    private void table(String name, String text) throws IOException {
        Files.writeString(folder.resolve(name), text, StandardCharsets.UTF_8);
    }

    @Test
    void ownRowsReplaceThePublishedOnesOfTheSameGuidelineOnly() throws IOException {
        table(
                "soil-ranges.csv",
                "guideline,test,element,condition,unit,step,class,low,high,level,status,source_id\n"
                        + "slan,Olsen,P,,ppm,1,poor,0,9,-1,ours,our-trial\n"
                        + "slan,Olsen,P,,ppm,1,rich,10,,0,ours,our-trial\n");
        Read<SoilTables> read = TableFolder.read(folder);
        assertThat(read.problems()).isEmpty();
        SoilTables tables = read.value().orElseThrow();
        assertThat(tables.ranges())
                .filteredOn(r -> r.guideline().equals("slan"))
                .singleElement()
                .satisfies(r -> {
                    assertThat(r.bandOf(9.6).name()).isEqualTo("rich");
                    assertThat(r.origin().source().citation()).contains("your own table");
                });
        assertThat(tables.ranges().stream().filter(r -> r.guideline().equals("mlsn")))
                .hasSize(5);
    }

    @Test
    void aTableThatMakesNoSenseIsReportedAndLeftOut() throws IOException {
        table(
                "soil-ranges.csv",
                "guideline,test,element,condition,unit,step,class,low,high,level,status,source_id\n"
                        + "slan,Olsen,P,,ppm,1,poor,0,9,-1,ours,our-trial\n"
                        + "slan,Olsen,P,,ppm,1,rich,12,,0,ours,our-trial\n");
        table("notes.csv", "a,b\n1,2\n");
        Read<SoilTables> read = TableFolder.read(folder);
        assertThat(read.problems())
                .singleElement()
                .satisfies(p -> assertThat(p.message()).contains("leaves a gap"));
        assertThat(read.value().orElseThrow().ranges())
                .isEqualTo(SoilTables.published().ranges());
    }

    @Test
    void aFolderThatIsNotThereIsSaid() {
        assertThat(TableFolder.read(folder.resolve("none")).value()).isEmpty();
    }
}
