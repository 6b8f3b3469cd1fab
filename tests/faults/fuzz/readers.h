#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace warmbench::tests {

/// A reader that takes any text: it reads it, and where it does, sees that what it read can be written and
/// read back the same. Aborts where that is not so; a crash, a hang or a sanitizer's finding is as bad.
struct FuzzedReader {
    const char* name; ///< also of its folder in tests/faults/corpus
    void (*feed)(std::string_view text);
};

/// Those of the core, and of addresses.
[[nodiscard]] const std::vector<FuzzedReader>& fuzzedReaders();
/// A book's file.
[[nodiscard]] const std::vector<FuzzedReader>& fileReaders();
/// The command line.
[[nodiscard]] const std::vector<FuzzedReader>& commandReaders();
/// Ends the program at once, loudly, unless it is so.
void mustBe(bool so, const char* what);

} // namespace warmbench::tests
