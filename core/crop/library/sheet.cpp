#include "core/crop/library/sheet.h"

#include <algorithm>
#include <charconv>
#include <cmath>

namespace warmbench {
namespace {

template <std::size_t size>
std::optional<std::size_t> placeAmong(const std::array<const char*, size>& names, std::string_view name) {
    const auto found = std::find(names.begin(), names.end(), name);
    if (found == names.end()) return std::nullopt;
    return static_cast<std::size_t>(found - names.begin());
}

MonthDay lastOf(unsigned month) {
    constexpr int leapYear = 2028;
    const std::chrono::year_month_day_last last{std::chrono::year{leapYear} / std::chrono::month{month} /
                                                std::chrono::last};
    return {month, static_cast<unsigned>(last.day())};
}

} // namespace

Sheet::Sheet(std::string name, const std::string& text, const std::vector<std::string>& columns)
    : m_columns(columns) {
    std::vector<exchange::CsvColumn> wanted;
    wanted.reserve(columns.size());
    for (const std::string& column : columns) wanted.push_back({column, true});
    auto reader = exchange::CsvReader::open(std::move(name), text, std::move(wanted));
    if (reader)
        m_reader = std::move(*reader);
    else
        m_refusal = reader.refusal();
}

bool Sheet::next() {
    if (m_refusal) return false;
    const auto moved = m_reader->next();
    if (!moved) m_refusal = moved.refusal();
    return moved && *moved;
}

void Sheet::refuse(std::string_view column, std::string_view expected) {
    if (!m_refusal) m_refusal = m_reader->refusal(place(column), expected);
}

std::size_t Sheet::place(std::string_view column) const {
    return static_cast<std::size_t>(std::find(m_columns.begin(), m_columns.end(), column) -
                                    m_columns.begin());
}

std::string Sheet::text(std::string_view column) {
    return m_refusal ? std::string{} : std::string{m_reader->cell(place(column))};
}

std::optional<std::string> Sheet::words(std::string_view column) {
    std::string cell = text(column);
    if (cell.empty()) return std::nullopt;
    return cell;
}

std::optional<double> Sheet::number(std::string_view column) {
    const auto cell = words(column);
    if (!cell) return std::nullopt;
    const auto value = numberIn(*cell);
    if (!value) refuse(column, "a number");
    return value;
}

std::optional<int> Sheet::count(std::string_view column) {
    constexpr double most = 9999;
    const auto value = number(column);
    if (!value) return std::nullopt;
    if (*value >= 0 && *value <= most && std::floor(*value) == *value) return static_cast<int>(*value);
    refuse(column, "a whole number from 0 to 9999");
    return std::nullopt;
}

std::optional<Celsius> Sheet::temperature(std::string_view column) {
    const auto value = number(column);
    if (!value) return std::nullopt;
    if (*value >= -50 && *value <= 100) return Celsius::fromUnits(*value);
    refuse(column, "a temperature from -50 to 100 °C");
    return std::nullopt;
}

std::optional<bool> Sheet::yesOrNo(std::string_view column) {
    const auto cell = words(column);
    if (!cell) return std::nullopt;
    if (*cell != "yes" && *cell != "no") refuse(column, "yes or no");
    return *cell == "yes";
}

std::optional<MonthDay> Sheet::monthDay(std::string_view column, bool lastOfMonth) {
    const auto cell = words(column);
    if (!cell) return std::nullopt;
    const bool wholeMonth = cell->size() == 2;
    const auto day = MonthDay::fromIso(wholeMonth ? *cell + "-01" : *cell);
    if (!day) refuse(column, "a month and day such as 05-31, or a month such as 05");
    return day && wholeMonth && lastOfMonth ? lastOf(day->month) : day;
}

std::optional<Wood> Sheet::wood(std::string_view column) {
    const auto found = woodNamed(text(column));
    if (!found) refuse(column, "one of softwood, semi-ripe, hardwood, evergreen hardwood, basal, leaf-bud");
    return found;
}

std::optional<Wood> woodNamed(std::string_view name) {
    const auto place = placeAmong(woodNames, name);
    return place ? std::optional{static_cast<Wood>(*place)} : std::nullopt;
}

std::optional<Cover> coverNamed(std::string_view name) {
    const auto place = placeAmong(coverNames, name);
    return place ? std::optional{static_cast<Cover>(*place)} : std::nullopt;
}

std::optional<double> numberIn(std::string_view text) {
    double value = 0;
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), value);
    if (error != std::errc{} || end != text.data() + text.size() || !std::isfinite(value))
        return std::nullopt;
    return value;
}

} // namespace warmbench
