package loamline.yard;

import static org.assertj.core.api.Assertions.assertThat;

import loamline.place.Frame;
import loamline.yard.Attachment.Sort;
import org.junit.jupiter.api.Test;

class AttachmentTest {
    private static final Yard YARD = Yard.empty("yard", Frame.local());

    @Test
    void aTableTakesThePlaceOfOneOfItsNameOnly() {
        Yard yard = YARD.attaching(Attachment.of(Sort.READINGS, "cups.csv", "1", "a"))
                .attaching(Attachment.of(Sort.READINGS, "cups.csv", "2", "b"))
                .attaching(Attachment.of(Sort.READINGS, "cups.csv", "1", "c"));
        assertThat(yard.attached(Sort.READINGS)).extracting(Attachment::text).containsExactly("b", "c");
    }

    @Test
    void tablesAreFoundByTheirSort() {
        Yard yard = YARD.attaching(Attachment.of(Sort.LAB, "lab.csv", "", "a"));
        assertThat(yard.attached(Sort.LAB)).hasSize(1);
        assertThat(yard.attached(Sort.LOG)).isEmpty();
    }
}
