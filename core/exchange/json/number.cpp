#include "core/exchange/json/number.h"

#include <algorithm>

namespace warmbench::json {
namespace {

constexpr std::int64_t hugeExponent = 1'000'000'000'000'000;
/// Numbers have at most this many digits before the point.
constexpr std::int64_t mostWholeDigits = 12;
/// Above 10 to this power a number is not taken as finite.
constexpr std::int64_t finiteExponent = 300;

bool isDigit(char c) {
    return c >= '0' && c <= '9';
}

std::int64_t readExponent(std::string_view text) {
    const bool negative = text.front() == '-';
    if (!isDigit(text.front())) text.remove_prefix(1);
    std::int64_t value = 0;
    for (const char c : text) value = std::min(value * 10 + (c - '0'), hugeExponent);
    return negative ? -value : value;
}

} // namespace

std::optional<Decimal> Decimal::read(std::string_view source) {
    if (!isDigit(source.back())) return std::nullopt;
    Decimal number;
    number.m_negative = source.front() == '-';
    bool afterPoint = false;
    for (std::size_t i = number.m_negative ? 1 : 0; i < source.size(); ++i) {
        const char c = source[i];
        if (c == '.') {
            afterPoint = true;
        } else if (isDigit(c)) {
            if (c != '0' || !number.m_digits.empty()) number.m_digits += c;
            if (afterPoint) --number.m_exponent;
        } else {
            number.m_exponent += readExponent(source.substr(i + 1));
            break;
        }
    }
    number.dropZeros();
    return number;
}

void Decimal::dropZeros() {
    const std::size_t used = m_digits.find_last_not_of('0') + 1;
    m_exponent += static_cast<std::int64_t>(m_digits.size() - used);
    m_digits.resize(used);
    if (used == 0) {
        m_negative = false;
        m_exponent = 0;
    }
}

std::strong_ordering operator<=>(const Decimal& a, const Decimal& b) {
    const auto sign = [](const Decimal& d) { return d.m_digits.empty() ? 0 : d.m_negative ? -1 : 1; };
    if (sign(a) != sign(b)) return sign(a) <=> sign(b);
    if (sign(a) == 0) return std::strong_ordering::equal;
    auto order = a.magnitude() <=> b.magnitude();
    if (order == 0) order = a.m_digits.compare(b.m_digits) <=> 0;
    return a.m_negative ? 0 <=> order : order;
}

std::variant<std::int64_t, Decimal::Fault> Decimal::parts(int places) const {
    if (m_digits.empty()) return std::int64_t{0};
    if (magnitude() - 1 > finiteExponent) return Fault::NotFinite;
    if (m_exponent + places < 0) return Fault::TooManyDecimals;
    if (magnitude() > mostWholeDigits) return Fault::TooLarge;
    std::int64_t value = 0;
    for (const char digit : m_digits) value = value * 10 + (digit - '0');
    for (std::int64_t i = 0; i < m_exponent + places; ++i) value *= 10;
    return m_negative ? -value : value;
}

std::variant<std::int64_t, Decimal::Fault> Decimal::partsRoundedDown(int places) const {
    if (m_exponent + places >= 0) return parts(places);
    Decimal cut = *this;
    const auto surplus = static_cast<std::uint64_t>(-(m_exponent + places));
    cut.m_digits.resize(m_digits.size() - std::min<std::uint64_t>(surplus, m_digits.size()));
    cut.m_exponent = -places;
    cut.dropZeros();
    auto found = cut.parts(places);
    if (auto* count = std::get_if<std::int64_t>(&found); count && m_negative) --*count;
    return found;
}

} // namespace warmbench::json
