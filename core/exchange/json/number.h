#pragma once

#include <compare>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <variant>

namespace warmbench::json {

/// A number exactly as a text gives it: digits * 10^exponent. Equal values are equal whatever their
/// spelling: 18, 18.0 and 1.8e1 are one number.
class Decimal {
public:
    Decimal() = default; ///< zero
    /// Reads a JSON number; its syntax must have been checked. An exponent beyond 10^15 counts as that.
    /// Nothing for the words NaN, Infinity and -Infinity.
    static std::optional<Decimal> read(std::string_view source);

    friend std::strong_ordering operator<=>(const Decimal& a, const Decimal& b);
    friend bool operator==(const Decimal& a, const Decimal& b) = default;

    /// What keeps a number from being a count of parts.
    enum class Fault : std::uint8_t { NotFinite, TooManyDecimals, TooLarge };
    /// The number as a count of 10^-places. Refused: above 10^300 (`NotFinite`, as a double would nearly be),
    /// more decimals than `places` (`TooManyDecimals`), 10^12 or more in magnitude (`TooLarge`).
    [[nodiscard]] std::variant<std::int64_t, Fault> parts(int places) const;
    /// The greatest count of 10^-places that is not above the number; refused as `parts` does, but for
    /// decimals.
    [[nodiscard]] std::variant<std::int64_t, Fault> partsRoundedDown(int places) const;

private:
    /// Power of ten of the first digit, plus one: 0 for 0.5, 1 for 5. Meaningless for zero.
    [[nodiscard]] std::int64_t magnitude() const {
        return static_cast<std::int64_t>(m_digits.size()) + m_exponent;
    }
    void dropZeros();

    bool m_negative = false;
    std::string m_digits; ///< neither begins nor ends with 0; empty for zero
    std::int64_t m_exponent = 0;
};

} // namespace warmbench::json
