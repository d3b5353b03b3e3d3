package loamline.files;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.List;

/**
 * Days as an iCalendar (RFC 5545): events of a whole day, lines folded at 75 octets (section 3.1), text escaped (section
 * 3.3.11). The stamp of every event is the day it lies on, since nothing here reads a clock.
 */
final class CalendarText {
    private static final int FOLD_OCTETS = 75;

    /**
     * An event.
     *
     * @param id unique in the world (section 3.8.4.7), of letters, digits and {@code -@.}
     * @param place where; may be empty
     */
    record Event(String id, LocalDate day, String title, String place, String description) {}

    private final StringBuilder text = new StringBuilder();

    private CalendarText() {}

    /** @param program name of the program, for PRODID */
    static String of(String program, List<Event> events) {
        CalendarText calendar = new CalendarText();
        calendar.line("BEGIN:VCALENDAR");
        calendar.line("VERSION:2.0");
        calendar.line("PRODID:-//" + escaped(program) + "//EN");
        calendar.line("CALSCALE:GREGORIAN");
        events.forEach(calendar::event);
        calendar.line("END:VCALENDAR");
        return calendar.text.toString();
    }

    private void event(Event event) {
        String day = DateTimeFormatter.BASIC_ISO_DATE.format(event.day());
        line("BEGIN:VEVENT");
        line("UID:" + event.id());
        line("DTSTAMP:" + day + "T000000Z");
        line("DTSTART;VALUE=DATE:" + day);
        line("DTEND;VALUE=DATE:"
                + DateTimeFormatter.BASIC_ISO_DATE.format(event.day().plusDays(1)));
        line("SUMMARY:" + escaped(event.title()));
        if (!event.place().isEmpty()) {
            line("LOCATION:" + escaped(event.place()));
        }
        line("DESCRIPTION:" + escaped(event.description()));
        line("TRANSP:TRANSPARENT");
        line("END:VEVENT");
    }

    static String escaped(String words) {
        return words.replace("\\", "\\\\")
                .replace(";", "\\;")
                .replace(",", "\\,")
                .replace("\r\n", "\n")
                .replace("\r", "\n")
                .replace("\n", "\\n");
    }

    /** Writes a line, folded between characters. */
    private void line(String words) {
        int octets = 0;
        for (int at = 0; at < words.length(); ) {
            String character = Character.toString(words.codePointAt(at));
            int width = character.getBytes(StandardCharsets.UTF_8).length;
            if (octets + width > FOLD_OCTETS) {
                text.append("\r\n ");
                octets = 1;
            }
            text.append(character);
            octets += width;
            at += character.length();
        }
        text.append("\r\n");
    }
}
