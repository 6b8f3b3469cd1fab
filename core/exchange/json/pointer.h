#pragma once

#include <array>
#include <cstddef>
#include <string>
#include <string_view>

namespace warmbench::json {

/// The place of a value in a document, as a JSON pointer (RFC 6901). It is a small value that costs no
/// allocation until its text is asked for. Keys are viewed, not copied: they must outlive it.
class Pointer {
public:
    /// Places deeper than this cannot be named.
    static constexpr std::size_t deepest = 8;

    [[nodiscard]] Pointer operator/(std::string_view key) const { return below({key, 0, true}); }
    [[nodiscard]] Pointer operator/(std::size_t index) const { return below({{}, index, false}); }

    /// `/batches/3/stays/0/low_c`; empty for the whole document. `~` and `/` in keys are `~0` and `~1`.
    [[nodiscard]] std::string text() const;

private:
    struct Step {
        std::string_view key;
        std::size_t index = 0;
        bool isKey = false;
    };
    [[nodiscard]] Pointer below(Step step) const;

    std::array<Step, deepest> m_steps{};
    std::size_t m_count = 0;
};

} // namespace warmbench::json
