package loamline.soil;

import java.util.Optional;

/** How pH, buffer pH, acidity or conductivity was measured. */
public enum LabMethod {
    /** pH in water. */
    WATER("water", Element.PH, "h2o|1:1water|1:2water|distilledwater"),
    /** pH in a salt solution: about 0.5 lower than in water. */
    SALT("CaCl2", Element.PH, "salt|kcl|cacl₂|0.01mcacl2|phs"),
    SMP("SMP", Element.BUFFER_PH, "smpbuffer"),
    SIKORA("Sikora", Element.BUFFER_PH, "sikora2"),
    MEHLICH("Mehlich", Element.BUFFER_PH, "modifiedmehlich|mehlichbuffer"),
    ADAMS_EVANS("Adams-Evans", Element.BUFFER_PH, "modifiedadamsevans|ae"),
    MOORE_SIKORA("Moore-Sikora", Element.BUFFER_PH, ""),
    WOODRUFF("Woodruff", Element.BUFFER_PH, "newwoodruff"),
    /** Conductivity of the extract of a saturated paste. */
    PASTE("paste", Element.EC, "saturatedpaste|saturationextract|ece"),
    ONE_TO_ONE("1:1", Element.EC, ""),
    ONE_TO_TWO("1:2", Element.EC, "");

    private static final Spellings<LabMethod> NAMES = Spellings.of(values(), e -> e.label, e -> e.spellings);

    private final String label;
    private final Element element;
    private final String spellings;

    LabMethod(String label, Element element, String spellings) {
        this.label = label;
        this.element = element;
        this.spellings = spellings;
    }

    /** As in files and tables, such as {@code Adams-Evans}. */
    public String label() {
        return label;
    }

    /** What a text names for an element; acidity is measured by the buffers. Empty if nothing. */
    public static Optional<LabMethod> of(String text, Element element) {
        Element measured = element == Element.ACIDITY ? Element.BUFFER_PH : element;
        return NAMES.find(text).filter(method -> method.element == measured);
    }
}
