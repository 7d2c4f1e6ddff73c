package railtrim.packaging;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The icon in the form each system asks for: on Windows and macOS a case around the same PNG pictures. */
final class Icons {
    private static final List<Integer> WINDOWS = List.of(16, 32, 48, 64, 128, 256);
    /** Names of sizes in an Apple icon; the second name of a size is for the finer screens. */
    private static final Map<String, Integer> APPLE = apple();

    private final Build build;

    Icons(Build build) {
        this.build = build;
    }

    private static Map<String, Integer> apple() {
        Map<String, Integer> sizes = new LinkedHashMap<>();
        sizes.put("ic11", 32);
        sizes.put("ic12", 64);
        sizes.put("ic07", 128);
        sizes.put("ic08", 256);
        sizes.put("ic13", 256);
        sizes.put("ic09", 512);
        sizes.put("ic14", 512);
        return sizes;
    }

    Path forThisSystem() throws IOException {
        Path folder = build.fresh("icons");
        return switch (Build.System.here()) {
            case LINUX -> Files.write(folder.resolve("railtrim.png"), png(256));
            case WINDOWS -> Files.write(folder.resolve("railtrim.ico"), ico());
            case MAC -> Files.write(folder.resolve("railtrim.icns"), icns());
        };
    }

    private byte[] png(int size) throws IOException {
        return Files.readAllBytes(build.resource("icon/" + IconDrawing.name(size)));
    }

    /** A directory of 16 bytes a picture, then the pictures; a size of 256 is written as 0. */
    byte[] ico() throws IOException {
        int at = 6 + 16 * WINDOWS.size();
        ByteBuffer file = ByteBuffer.allocate(1 << 20).order(ByteOrder.LITTLE_ENDIAN);
        file.putShort((short) 0).putShort((short) 1).putShort((short) WINDOWS.size());
        for (int size : WINDOWS) {
            int length = png(size).length;
            file.put((byte) size).put((byte) size).put((byte) 0).put((byte) 0);
            file.putShort((short) 1).putShort((short) 32).putInt(length).putInt(at);
            at += length;
        }
        for (int size : WINDOWS) {
            file.put(png(size));
        }
        return written(file);
    }

    /** The length of the whole, then for each picture its name, its length with this head, and the picture. */
    byte[] icns() throws IOException {
        ByteBuffer file = ByteBuffer.allocate(1 << 20).order(ByteOrder.BIG_ENDIAN);
        file.put("icns".getBytes(StandardCharsets.US_ASCII)).putInt(0);
        for (Map.Entry<String, Integer> picture : APPLE.entrySet()) {
            byte[] png = png(picture.getValue());
            file.put(picture.getKey().getBytes(StandardCharsets.US_ASCII))
                    .putInt(8 + png.length)
                    .put(png);
        }
        file.putInt(4, file.position());
        return written(file);
    }

    private static byte[] written(ByteBuffer file) {
        byte[] bytes = new byte[file.position()];
        file.flip().get(bytes);
        return bytes;
    }
}
