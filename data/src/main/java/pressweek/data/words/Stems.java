package pressweek.data.words;

/** English words without the endings that do not change what they name. */
final class Stems {
  private static final int SHORTEST = 4;

  private Stems() {}

  /** A word without the s of the plural: {@code studs} is {@code stud}. */
  static String plural(String word) {
    int length = word.length();
    if (length < SHORTEST || !word.endsWith("s")) {
      return word;
    }
    if (word.endsWith("shes") || word.endsWith("ches") || word.endsWith("xes")) {
      return word.substring(0, length - 2);
    }
    boolean kept = word.endsWith("ss") || word.endsWith("us") || word.endsWith("is");
    return kept ? word : word.substring(0, length - 1);
  }

  /**
   * What {@code plated}, {@code plating} and {@code plate} have in common: the word without ending
   * and silent e.
   */
  static String root(String word) {
    String root = plural(word);
    if (root.endsWith("ing") && hasVowel(root, root.length() - 3)) {
      root = single(root.substring(0, root.length() - 3));
    } else if (root.endsWith("ed")
        && root.length() > SHORTEST
        && hasVowel(root, root.length() - 2)) {
      root = single(root.substring(0, root.length() - 2));
    }
    return root.length() >= SHORTEST && root.endsWith("e")
        ? root.substring(0, root.length() - 1)
        : root;
  }

  /** Without the second of two like consonants at the end, as {@code tapp} of {@code tapped}. */
  private static String single(String root) {
    int last = root.length() - 1;
    boolean twice =
        last > 1
            && root.charAt(last) == root.charAt(last - 1)
            && "lsz".indexOf(root.charAt(last)) < 0;
    return twice ? root.substring(0, last) : root;
  }

  private static boolean hasVowel(String word, int to) {
    for (int i = 0; i < to; i++) {
      if (isVowel(word.charAt(i))) {
        return true;
      }
    }
    return false;
  }

  static boolean isVowel(char c) {
    return "aeiou".indexOf(c) >= 0;
  }
}
