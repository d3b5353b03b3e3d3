package loamline.files;

import java.io.StringReader;
import java.util.Optional;
import java.util.stream.Stream;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import loamline.place.Affine;
import loamline.place.PlaceException;

/**
 * The two elements of a GDAL side file (.aux.xml) that say where an image lies.
 *
 * @param wkt the coordinate reference system as well-known text
 * @param toCrs from pixels to its axes
 */
record GdalSideFile(Optional<String> wkt, Optional<Affine> toCrs) {
    static final GdalSideFile EMPTY = new GdalSideFile(Optional.empty(), Optional.empty());

    static GdalSideFile parse(String text) throws PlaceException {
        XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
        factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
        factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
        try {
            XMLStreamReader xml = factory.createXMLStreamReader(new StringReader(text));
            GdalSideFile found = EMPTY;
            while (xml.hasNext()) {
                if (xml.next() == XMLStreamConstants.START_ELEMENT) {
                    found = found.with(xml);
                }
            }
            return found;
        } catch (XMLStreamException | IllegalArgumentException e) {
            throw new PlaceException("the .aux.xml file beside the image is damaged", e);
        }
    }

    private GdalSideFile with(XMLStreamReader xml) throws XMLStreamException {
        return switch (xml.getLocalName()) {
            case "SRS" -> new GdalSideFile(Optional.of(xml.getElementText()).filter(s -> !s.isBlank()), toCrs);
            case "GeoTransform" -> new GdalSideFile(wkt, Optional.of(affine(xml.getElementText())));
            default -> this;
        };
    }

    /** x of the upper left corner, its steps a column and a row; the same for y. */
    private static Affine affine(String numbers) {
        double[] n = Stream.of(numbers.split(",", -1))
                .mapToDouble(word -> Double.parseDouble(word.strip()))
                .toArray();
        if (n.length != 6) {
            throw new IllegalArgumentException("six numbers place an image, not " + n.length);
        }
        return new Affine(n[1], n[2], n[0], n[4], n[5], n[3]);
    }
}
