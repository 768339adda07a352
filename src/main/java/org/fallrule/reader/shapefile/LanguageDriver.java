package org.fallrule.reader.shapefile;

import java.nio.charset.Charset;
import java.util.Map;
import java.util.Optional;

/** What the language byte of a {@code .dbf} (byte 29) means. */
final class LanguageDriver {
    private static final Map<Integer, String> CODE_PAGES = Map.ofEntries(
            Map.entry(0x01, "437"),
            Map.entry(0x02, "850"),
            Map.entry(0x03, "1252"),
            Map.entry(0x08, "865"),
            Map.entry(0x09, "437"),
            Map.entry(0x0A, "850"),
            Map.entry(0x0B, "437"),
            Map.entry(0x0D, "437"),
            Map.entry(0x0E, "850"),
            Map.entry(0x0F, "437"),
            Map.entry(0x10, "850"),
            Map.entry(0x11, "437"),
            Map.entry(0x12, "850"),
            Map.entry(0x13, "932"),
            Map.entry(0x14, "850"),
            Map.entry(0x15, "437"),
            Map.entry(0x16, "850"),
            Map.entry(0x17, "865"),
            Map.entry(0x18, "437"),
            Map.entry(0x19, "437"),
            Map.entry(0x1A, "850"),
            Map.entry(0x1B, "437"),
            Map.entry(0x1C, "863"),
            Map.entry(0x1D, "850"),
            Map.entry(0x1F, "852"),
            Map.entry(0x22, "852"),
            Map.entry(0x23, "852"),
            Map.entry(0x24, "860"),
            Map.entry(0x25, "850"),
            Map.entry(0x26, "866"),
            Map.entry(0x37, "850"),
            Map.entry(0x40, "852"),
            Map.entry(0x4D, "936"),
            Map.entry(0x4E, "949"),
            Map.entry(0x4F, "950"),
            Map.entry(0x50, "874"),
            Map.entry(0x57, "1252"),
            Map.entry(0x58, "1252"),
            Map.entry(0x59, "1252"),
            Map.entry(0x64, "852"),
            Map.entry(0x65, "866"),
            Map.entry(0x66, "865"),
            Map.entry(0x67, "861"),
            Map.entry(0x6A, "737"),
            Map.entry(0x6B, "857"),
            Map.entry(0x6C, "863"),
            Map.entry(0x78, "950"),
            Map.entry(0x79, "949"),
            Map.entry(0x7A, "936"),
            Map.entry(0x7B, "932"),
            Map.entry(0x7C, "874"),
            Map.entry(0x86, "737"),
            Map.entry(0x87, "852"),
            Map.entry(0x88, "857"),
            Map.entry(0xC8, "1250"),
            Map.entry(0xC9, "1251"),
            Map.entry(0xCA, "1254"),
            Map.entry(0xCB, "1253"),
            Map.entry(0xCC, "1257"));

    private LanguageDriver() {}

    /** The encoding that the byte stands for; empty for 0 and for bytes that stand for none that can be read. */
    static Optional<Charset> charset(int language) {
        return Optional.ofNullable(CODE_PAGES.get(language)).flatMap(CodePageName::charset);
    }
}
