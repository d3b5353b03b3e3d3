package loamline.units;

import java.util.Arrays;
import java.util.stream.Collectors;

/** How units are written, as alternatives separated by {@code |}; the grammar is that of {@link Unit#spellings()}. */
final class Spelling {
    static final String INCH = "in|inch|inches|\"|''";
    static final String FOOT = "ft|feet|foot|'";
    static final String YARD = "yd|yds|yard|yards";
    static final String MM = "mm|millimeter|millimeters|millimetre|millimetres";
    static final String CM = "cm|centimeter|centimeters|centimetre|centimetres";
    static final String METRE = "m|meter|meters|metre|metres";
    static final String ACRE = "ac|acre|acres";
    static final String HECTARE = "ha|hectare|hectares";
    static final String FT2 = raised("ft|foot|feet", 2, "sq|square") + "|sf";
    static final String YD2 = raised("yd|yard|yards", 2, "sq|square");
    static final String M2 = raised(METRE, 2, "sq|square");
    static final String FT3 = raised("ft|foot|feet", 3, "cu|cubic");
    static final String YD3 = raised("yd|yard|yards", 3, "cu|cubic");
    static final String M3 = raised(METRE, 3, "cu|cubic");
    static final String ML = "ml|milliliter|milliliters|millilitre|millilitres|cc";
    static final String LITRE = "l|liter|liters|litre|litres";
    static final String GALLON = "gal|gallon|gallons";
    static final String FLUID_OUNCE = "fl oz|fluid ounce|fluid ounces";
    static final String OUNCE = "oz|ounce|ounces";
    static final String POUND = "lb|lbs|pound|pounds";
    static final String GRAM = "g|gram|grams";
    static final String KILOGRAM = "kg|kilogram|kilograms";
    static final String SECOND = "s|sec|second|seconds";
    static final String MINUTE = "min|minute|minutes";
    static final String HOUR = "h|hr|hrs|hour|hours";

    private Spelling() {}

    /** Every spelling of the first over every spelling of the second: {@code gal/min|gal/minute|...}. */
    static String per(String above, String below) {
        return pairs(above, "/", below);
    }

    /** A count before every spelling: {@code 1000 ft2|1000 sq ft|...}. */
    static String times(int count, String spellings) {
        return pairs(Integer.toString(count), " ", spellings);
    }

    private static String raised(String lengths, int power, String words) {
        String powers = Arrays.stream(lengths.split("\\|"))
                .map(length -> length + power)
                .collect(Collectors.joining("|"));
        return powers + "|" + pairs(words, " ", lengths);
    }

    private static String pairs(String firsts, String between, String seconds) {
        return Arrays.stream(firsts.split("\\|"))
                .flatMap(first -> Arrays.stream(seconds.split("\\|")).map(second -> first + between + second))
                .collect(Collectors.joining("|"));
    }
}
