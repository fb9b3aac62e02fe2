package pressweek.data.files.table;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pressweek.data.files.table.FileScan.Content;

class FileScanTest {
  @TempDir private Path folder;

  private FileScan scan(byte[] bytes) throws IOException {
    return FileScan.of(Files.write(folder.resolve("f"), bytes));
  }

  @Test
  void theHashIsSha256() throws IOException {
    // FIPS 180-4 example: SHA-256 of "abc".
    assertThat(scan("abc".getBytes(StandardCharsets.US_ASCII)).sha256())
        .isEqualTo("ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
  }

  @Test
  void anEmptyFileIsText() throws IOException {
    assertThat(scan(new byte[0]).content()).isEqualTo(Content.UTF_8);
  }

  @Test
  void aCharacterOverTheEdgeOfAChunkIsUtf8() throws IOException {
    for (int before : new int[] {65_533, 65_534, 65_535}) {
      assertThat(scan(("x".repeat(before) + "€€").getBytes(StandardCharsets.UTF_8)).oddLine())
          .isZero();
    }
  }

  @Test
  void theFirstOddLineIsNamed() throws IOException {
    FileScan scan = scan("ä\nb\nü".getBytes(StandardCharsets.UTF_8));
    assertThat(scan.content()).isEqualTo(Content.UTF_8);

    FileScan odd = scan("a\nb\nü\n".getBytes(Charset.forName("windows-1252")));
    assertThat(odd.content()).isEqualTo(Content.WINDOWS_1252);
    assertThat(odd.oddLine()).isEqualTo(3);
  }

  @Test
  void aCharacterCutOffAtTheEndIsOdd() throws IOException {
    assertThat(scan(new byte[] {'a', '\n', (byte) 0xE2, (byte) 0x82}).oddLine()).isEqualTo(2);
  }

  @Test
  void controlCharactersMakeItBinary() throws IOException {
    assertThat(scan(new byte[] {'a', 0, 'b'}).content()).isEqualTo(Content.BINARY);
    assertThat(scan(new byte[] {'a', '\t', '\r', '\n', 0x1A}).content()).isEqualTo(Content.UTF_8);
  }
}
