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

[[nodiscard]] const std::vector<FuzzedReader>& fuzzedReaders();

} // namespace warmbench::tests
