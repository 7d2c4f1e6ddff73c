package railtrim.job;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.time.DateTimeException;
import java.time.Instant;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.zip.CRC32C;

/**
 * The lines of a job file. Each is one JSON object whose last key is {@code crc}: CRC-32C (RFC 3720) in eight small hexadecimal digits over every
 * byte of the line before it, so that a changed bit anywhere is noticed. Since version 2 the key before it is {@code own}: the tag of the
 * {@link Mark} the line was written with, so that a line from elsewhere is noticed. Version 3 knows entries that were taken back; a file of version 2
 * goes on as it is.
 */
final class Lines {
    static final String FORMAT = "railtrim job";
    static final int VERSION = 3;

    /** The first version whose lines carry a tag. */
    static final int TAGGED = 2;

    /** Longest line without its line feed, bytes. */
    static final int LONGEST = 16 * 1024;

    /** Longest name of a job, characters. */
    static final int LONGEST_NAME = 200;

    private static final HexFormat HEX = HexFormat.of();
    private static final int SEAL_LENGTH = sealOf(0).length();
    private static final int OWN_LENGTH = ownedBy("0".repeat(16)).length();
    private static final Pattern OWNED = Pattern.compile(",\"own\":\"([0-9a-f]{16})\"");
    private static final Pattern INSTANT = Pattern.compile("\\d{4}-\\d\\d-\\d\\dT\\d\\d:\\d\\d:\\d\\d(\\.\\d{1,9})?Z");

    private Lines() {}

    /** @param sealed whether the line carries a check sum and it is right */
    record Header(String name, long version, boolean sealed) {}

    /** A line as it goes into the file, its line feed included, and the tag it carries. */
    record Written(byte[] bytes, String tag) {}

    /** @throws IllegalArgumentException for a name that is too long or could not be read back */
    static Written header(String name, Mark mark) {
        if (name.length() > LONGEST_NAME || !FlatJson.wellFormed(name)) {
            throw new IllegalArgumentException("a name of " + name.length() + " characters");
        }
        Map<String, Object> values = new LinkedHashMap<>();
        values.put("format", FORMAT);
        values.put("version", new FlatJson.Digits(Integer.toString(VERSION)));
        values.put("name", name);
        return seal(FlatJson.write(values), "", mark);
    }

    /** Reads the first line of any version: only {@code format}, {@code version} and {@code name} have to be there. @throws BadLine for anything else */
    static Header readHeader(byte[] line) throws BadLine {
        boolean sealed = isSealed(line);
        Map<String, Object> values = FlatJson.read(text(line));
        if (!FORMAT.equals(FactCodec.takeText(values, "format"))) {
            throw new BadLine(BadLine.Why.UNKNOWN);
        }
        long version = FactCodec.takeWhole(values, "version", 1);
        return new Header(FactCodec.takeText(values, "name"), version, sealed);
    }

    /**
     * One fact.
     *
     * @param before tag of the line before
     * @throws IllegalArgumentException where it could not be read back
     */
    static Written entry(Entry entry, String before, Mark mark) {
        String time = entry.time().toString();
        if (!INSTANT.matcher(time).matches()) {
            throw new IllegalArgumentException(time);
        }
        Map<String, Object> values = new LinkedHashMap<>();
        values.put("sequence", new FlatJson.Digits(Long.toString(entry.sequence())));
        values.put("time", time);
        values.put("session", new FlatJson.Digits(Integer.toString(entry.session())));
        values.put("tick", new FlatJson.Digits(Long.toString(entry.tick())));
        values.putAll(FactCodec.write(entry.fact()));
        Written line = seal(FlatJson.write(values), before, mark);
        if (line.bytes().length - 1 > LONGEST) {
            throw new IllegalArgumentException("a line of " + line.bytes().length + " bytes");
        }
        return line;
    }

    /** The tag a line carries where a tag belongs, empty for none. Says nothing about whose it is. */
    static Optional<String> tag(byte[] line) {
        int open = line.length - SEAL_LENGTH - OWN_LENGTH;
        if (open < 1) {
            return Optional.empty();
        }
        Matcher owned = OWNED.matcher(new String(line, open, OWN_LENGTH, StandardCharsets.ISO_8859_1));
        return owned.matches() ? Optional.of(owned.group(1)) : Optional.empty();
    }

    /** Whether a line was written with this mark, behind a line that carries the tag {@code before}. */
    static boolean fits(byte[] line, String before, Mark mark) {
        return tag(line)
                .filter(tag -> tag.equals(mark.tag(before, line, line.length - SEAL_LENGTH - OWN_LENGTH)))
                .isPresent();
    }

    /** @param before the entry on the line before, null for the first; order, session and tick have to follow on from it */
    static Entry readEntry(byte[] line, Entry before, long version) throws BadLine {
        if (line.length > LONGEST) {
            throw new BadLine(BadLine.Why.LIMIT);
        }
        if (!isSealed(line)) {
            throw new BadLine(BadLine.Why.CHECKSUM);
        }
        Map<String, Object> values = FlatJson.read(text(line));
        values.remove("crc");
        if (version >= TAGGED && tag(line).isPresent()) {
            values.remove("own");
        } else if (version >= TAGGED) {
            throw new BadLine(BadLine.Why.KEYS);
        }
        long sequence = FactCodec.takeWhole(values, "sequence", 1);
        Instant time = instant(FactCodec.takeText(values, "time"));
        long session = FactCodec.takeWhole(values, "session", 1);
        long tick = FactCodec.takeWhole(values, "tick", 0);
        if (session > Integer.MAX_VALUE) {
            throw new BadLine(BadLine.Why.VALUE);
        }
        Fact fact = FactCodec.take(values);
        if (!values.isEmpty()) {
            throw new BadLine(BadLine.Why.KEYS);
        }
        Entry entry = new Entry(sequence, time, (int) session, tick, fact);
        if (!follows(before, entry)) {
            throw new BadLine(BadLine.Why.ORDER);
        }
        return entry;
    }

    /** The wall clock may be set back; the sequence and, within one session, the ticks may not. */
    private static boolean follows(Entry before, Entry entry) {
        if (before == null) {
            return entry.sequence() == 1;
        }
        boolean laterSession = entry.session() > before.session();
        boolean sameSession = entry.session() == before.session() && entry.tick() >= before.tick();
        return entry.sequence() == before.sequence() + 1 && (laterSession || sameSession);
    }

    private static Instant instant(String text) throws BadLine {
        try {
            if (INSTANT.matcher(text).matches()) {
                return Instant.parse(text);
            }
        } catch (DateTimeException e) {
            // A thirteenth month and the like: fall through.
        }
        throw new BadLine(BadLine.Why.VALUE);
    }

    private static Written seal(String object, String before, Mark mark) {
        String open = object.substring(0, object.length() - 1);
        byte[] payload = open.getBytes(StandardCharsets.UTF_8);
        String tag = mark.tag(before, payload, payload.length);
        byte[] owned = (open + ownedBy(tag)).getBytes(StandardCharsets.UTF_8);
        String sealed = open + ownedBy(tag) + sealOf(checksum(owned, owned.length));
        return new Written((sealed + "\n").getBytes(StandardCharsets.UTF_8), tag);
    }

    private static String ownedBy(String tag) {
        return ",\"own\":\"" + tag + "\"";
    }

    private static String sealOf(int checksum) {
        return ",\"crc\":\"" + HEX.toHexDigits(checksum) + "\"}";
    }

    private static boolean isSealed(byte[] line) {
        int open = line.length - SEAL_LENGTH;
        return open >= 1
                && sealOf(checksum(line, open))
                        .equals(new String(line, open, SEAL_LENGTH, StandardCharsets.ISO_8859_1));
    }

    private static int checksum(byte[] line, int length) {
        CRC32C crc = new CRC32C();
        crc.update(line, 0, length);
        return (int) crc.getValue();
    }

    private static String text(byte[] line) throws BadLine {
        if (line.length > LONGEST) {
            throw new BadLine(BadLine.Why.LIMIT);
        }
        try {
            return StandardCharsets.UTF_8
                    .newDecoder()
                    .onMalformedInput(CodingErrorAction.REPORT)
                    .onUnmappableCharacter(CodingErrorAction.REPORT)
                    .decode(ByteBuffer.wrap(line))
                    .toString();
        } catch (CharacterCodingException e) {
            throw new BadLine(BadLine.Why.NOT_JSON);
        }
    }
}
