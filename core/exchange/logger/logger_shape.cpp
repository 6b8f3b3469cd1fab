#include "core/exchange/logger/logger_shape.h"

#include "core/exchange/csv/moment.h"
#include "core/quantity/day.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>
#include <tuple>

namespace warmbench::exchange {
namespace {

constexpr std::size_t linesLookedAt = 200;

std::string_view trimmed(std::string_view cell) {
    while (!cell.empty() && (cell.front() == ' ' || cell.front() == '\t')) cell.remove_prefix(1);
    while (!cell.empty() && (cell.back() == ' ' || cell.back() == '\t' || cell.back() == '\r'))
        cell.remove_suffix(1);
    return cell;
}

std::string lowered(std::string_view text) {
    std::string low(text);
    for (char& c : low)
        if (c >= 'A' && c <= 'Z') c = static_cast<char>(c - 'A' + 'a');
    return low;
}

/// Nothing roots in more, so that a file of which most is hotter tells °F: common practice, no source.
constexpr double hottestCelsius = 45;

bool hasAny(const std::string& text, std::initializer_list<const char*> words) {
    return std::any_of(words.begin(), words.end(),
                       [&](const char* word) { return text.find(word) != std::string::npos; });
}

bool meansHumidity(const std::string& name) {
    const std::string low = lowered(name);
    return hasAny(low, {"humid", "feucht", "%", "rh", "hygro"});
}

bool meansTemperature(const std::string& name) {
    return hasAny(lowered(name), {"temp", "celsius", "fahrenheit", "°", "root", "wurzel", "soil", "boden"});
}

bool meansFahrenheit(const std::string& name) {
    const std::string low = lowered(name);
    const bool last =
        low.size() > 1 && low.ends_with('f') &&
        (low[low.size() - 2] == ' ' || low[low.size() - 2] == ',' || low[low.size() - 2] == '/');
    return last || hasAny(low, {"fahrenheit", "°f", "℉", "(f)", "[f]", "deg f", "_f"}) || low == "f";
}

bool meansCelsius(const std::string& name) {
    return hasAny(lowered(name), {"celsius", "°c", "℃", "(c)", "[c]", "deg c", "_c"});
}

/// Whether most of the temperatures of a file's first lines would be too hot for cuttings if they were °C.
bool readsAsFahrenheit(const std::vector<std::string_view>& lines, const LoggerShape& shape) {
    std::vector<double> values;
    std::vector<std::string_view> cells;
    for (std::size_t line = shape.firstLine - 1; line < lines.size(); ++line) {
        splitLine(trimmed(lines[line]), shape.delimiter, cells);
        if (shape.celsiusColumn >= cells.size()) continue;
        if (const auto value = numberIn(cells[shape.celsiusColumn], shape.decimalComma))
            values.push_back(*value);
    }
    if (values.empty()) return false;
    const auto middle = values.begin() + static_cast<std::ptrdiff_t>(values.size() / 2);
    std::nth_element(values.begin(), middle, values.end());
    return *middle > hottestCelsius;
}

std::vector<std::string_view> firstLines(std::string_view text) {
    std::vector<std::string_view> lines;
    while (!text.empty() && lines.size() < linesLookedAt) {
        const std::size_t end = text.find('\n');
        lines.push_back(text.substr(0, end));
        if (end == std::string_view::npos) break;
        text.remove_prefix(end + 1);
    }
    return lines;
}

/// Takes a number of `least` to `most` digits off the front.
std::optional<int> takeDigits(std::string_view& text, std::size_t least, std::size_t most) {
    std::size_t count = 0;
    int value = 0;
    while (count < most && count < text.size() && text[count] >= '0' && text[count] <= '9')
        value = value * 10 + (text[count++] - '0');
    if (count < least) return std::nullopt;
    text.remove_prefix(count);
    return value;
}

bool takeAny(std::string_view& text, std::string_view anyOf) {
    if (text.empty() || anyOf.find(text.front()) == std::string_view::npos) return false;
    text.remove_prefix(1);
    return true;
}

/// Seconds of `6:30`, `06:30:15`, `6:30 PM`.
std::optional<std::int64_t> clockIn(std::string_view text) {
    text = trimmed(text);
    const auto hour = takeDigits(text, 1, 2);
    if (!hour || *hour > 24 || !takeAny(text, ":.")) return std::nullopt;
    const auto minute = takeDigits(text, 2, 2);
    if (!minute || *minute > 59) return std::nullopt;
    int second = 0;
    if (takeAny(text, ":")) {
        const auto read = takeDigits(text, 2, 2);
        if (!read || *read > 59) return std::nullopt;
        second = *read;
        if (takeAny(text, ".,") && !takeDigits(text, 1, 9)) return std::nullopt;
    }
    int hours = *hour;
    const std::string half = lowered(trimmed(text));
    if (!half.empty()) {
        if ((half != "am" && half != "pm") || hours < 1 || hours > 12) return std::nullopt;
        hours = hours % 12 + (half == "pm" ? 12 : 0);
    }
    const std::int64_t seconds = (std::int64_t{hours} * 60 + *minute) * 60 + second;
    return seconds > 86'400 ? std::nullopt : std::optional(seconds);
}

/// The date at the front of a text, which is taken off it.
std::optional<Day> takeDate(std::string_view& text, DateOrder order) {
    constexpr std::string_view between = ".-/";
    std::array<int, 3> parts{};
    for (std::size_t i = 0; i < 3; ++i) {
        const auto part = takeDigits(text, 1, 4);
        if (!part || (i < 2 && !takeAny(text, between))) return std::nullopt;
        parts[i] = *part;
    }
    auto [year, month, day] = order == DateOrder::YearFirst  ? std::tuple(parts[0], parts[1], parts[2])
                              : order == DateOrder::DayFirst ? std::tuple(parts[2], parts[1], parts[0])
                                                             : std::tuple(parts[2], parts[0], parts[1]);
    if (year < 100) year += 2000;
    return Day::make(year, static_cast<unsigned>(month), static_cast<unsigned>(day));
}

/// How often each cell of the lines can be a time, or a number, with a delimiter.
struct Trial {
    LoggerShape shape;
    std::size_t readings = 0;
    std::size_t numbers = 0; ///< cells of them

    /// Whether whole numbers alone, such as a humidity's, made the other way to write decimals seem to do.
    [[nodiscard]] bool readsMoreThan(const Trial& other) const {
        if (readings != other.readings) return readings > other.readings;
        return numbers > other.numbers && shape.delimiter == other.shape.delimiter &&
               shape.order == other.shape.order && shape.timeColumn == other.shape.timeColumn &&
               shape.timeApart == other.shape.timeApart;
    }
};

Trial tried(const std::vector<std::string_view>& lines, LoggerShape shape) {
    Trial trial{shape, 0, 0};
    std::vector<std::string_view> cells;
    for (std::size_t i = 0; i < lines.size(); ++i) {
        splitLine(trimmed(lines[i]), shape.delimiter, cells);
        if (cells.size() <= shape.timeColumn + 1) continue;
        const std::string_view time = shape.timeApart ? cells[shape.timeColumn + 1] : std::string_view{};
        if (!shownIn(cells[shape.timeColumn], time, shape.order)) continue;
        const auto numbers = std::count_if(
            cells.begin() + static_cast<std::ptrdiff_t>(shape.timeColumn) + (shape.timeApart ? 2 : 1),
            cells.end(),
            [&](std::string_view cell) { return numberIn(cell, shape.decimalComma).has_value(); });
        if (numbers == 0) continue;
        trial.numbers += static_cast<std::size_t>(numbers);
        if (trial.readings++ == 0) trial.shape.firstLine = i + 1;
    }
    return trial;
}

/// The column that a hint names, by name or number.
Result<std::size_t> hinted(const std::string& file, const LoggerShape& shape, const std::string& hint,
                           std::size_t width) {
    for (std::size_t i = 0; i < shape.names.size(); ++i)
        if (shape.names[i] == hint) return i;
    std::size_t number = 0;
    const auto [end, error] = std::from_chars(hint.data(), hint.data() + hint.size(), number);
    if (error == std::errc{} && end == hint.data() + hint.size() && number >= 1 && number <= width)
        return number - 1;
    return Refusal{file,
                   phrase("found no column '%1', expected a name of the first line or a number from 1 to %2",
                          hint, width)};
}

} // namespace

void splitLine(std::string_view line, char delimiter, std::vector<std::string_view>& cells) {
    cells.clear();
    while (true) {
        if (!line.empty() && line.front() == '"') {
            const std::size_t quote = line.find('"', 1);
            if (quote != std::string_view::npos) {
                cells.push_back(trimmed(line.substr(1, quote - 1)));
                line.remove_prefix(quote + 1);
                const std::size_t end = line.find(delimiter);
                if (end == std::string_view::npos) return;
                line.remove_prefix(end + 1);
                continue;
            }
        }
        const std::size_t end = line.find(delimiter);
        cells.push_back(trimmed(line.substr(0, end)));
        if (end == std::string_view::npos) return;
        line.remove_prefix(end + 1);
    }
}

std::optional<Shown> shownIn(std::string_view date, std::string_view time, DateOrder order) {
    if (order == DateOrder::YearFirst && time.empty()) {
        if (date.find_first_of("./") == std::string_view::npos || date.find('T') != std::string_view::npos) {
            const auto moment = momentFromIso(date);
            if (!moment || date.size() < 12) return std::nullopt;
            return Shown{moment->microseconds / 1'000'000, moment->offset};
        }
    }
    std::string_view rest = date;
    const auto day = takeDate(rest, order);
    if (!day) return std::nullopt;
    if (time.empty()) {
        if (!takeAny(rest, " T,")) return std::nullopt;
        time = rest;
    } else if (!trimmed(rest).empty()) {
        return std::nullopt;
    }
    const auto clock = clockIn(time);
    if (!clock) return std::nullopt;
    return Shown{std::int64_t{day->number()} * 86'400 + *clock, false};
}

std::optional<double> numberIn(std::string_view cell, bool decimalComma) {
    std::array<char, 32> buffer{};
    if (cell.empty() || cell.size() >= buffer.size()) return std::nullopt;
    if (decimalComma) {
        std::copy(cell.begin(), cell.end(), buffer.begin());
        std::replace(buffer.begin(), buffer.end(), ',', '.');
        cell = std::string_view(buffer.data(), cell.size());
    }
    if (cell.front() == '+') cell.remove_prefix(1);
    double value = 0;
    const auto [end, error] = std::from_chars(cell.data(), cell.data() + cell.size(), value);
    if (error != std::errc{} || end != cell.data() + cell.size() || !std::isfinite(value))
        return std::nullopt;
    return value;
}

Phrase LoggerShape::words() const {
    const auto column = [&](std::size_t i) -> Phrase {
        return i < names.size() && !names[i].empty() ? phrase("'%1'", names[i]) : phrase("column %1", i + 1);
    };
    const Phrase dates = order == DateOrder::YearFirst  ? phrase("dates year first")
                         : order == DateOrder::DayFirst ? phrase("dates day first")
                                                        : phrase("dates month first");
    std::vector<Phrase> columns{
        timeApart ? phrase("time in %1 and the next", column(timeColumn))
                  : phrase("time in %1", column(timeColumn)),
        byHeat ? phrase("temperature in %1 as °F, as so many °C would be too hot for cuttings",
                        column(celsiusColumn))
               : phrase("temperature in %1 as %2", column(celsiusColumn), fahrenheit ? "°F" : "°C")};
    if (humidityColumn) columns.push_back(phrase("humidity in %1", column(*humidityColumn)));
    return phrase("cells apart by %1, %2, %3; %4",
                  delimiter == '\t' ? phrase("tabs") : phrase("'%1'", std::string(1, delimiter)),
                  decimalComma ? phrase("decimal comma") : phrase("decimal point"), dates, columns);
}

Result<LoggerShape> shapeOf(const std::string& name, std::string_view text, const LoggerHints& hints) {
    if (text.substr(0, 3) == "\xEF\xBB\xBF") text.remove_prefix(3);
    const std::vector<std::string_view> lines = firstLines(text);
    Trial best;
    for (const char delimiter : {';', '\t', ',', '|'})
        for (const bool comma : {false, true})
            for (const DateOrder order : {DateOrder::YearFirst, DateOrder::DayFirst, DateOrder::MonthFirst}) {
                if (order != hints.order.value_or(order) || comma != hints.decimalComma.value_or(comma) ||
                    delimiter != hints.delimiter.value_or(delimiter))
                    continue;
                for (std::size_t column = 0; column < 4; ++column)
                    for (const bool apart : {false, true}) {
                        LoggerShape shape;
                        shape.delimiter = delimiter;
                        shape.decimalComma = comma;
                        shape.order = order;
                        shape.timeColumn = column;
                        shape.timeApart = apart;
                        const Trial trial = tried(lines, shape);
                        if (trial.readsMoreThan(best)) best = trial;
                    }
            }
    if (best.readings == 0)
        return Refusal{name,
                       phrase("found no line with a time and a temperature, expected a logger's readings")};
    LoggerShape& shape = best.shape;
    std::vector<std::string_view> cells;
    if (shape.firstLine > 1) {
        splitLine(trimmed(lines[shape.firstLine - 2]), shape.delimiter, cells);
        shape.names.assign(cells.begin(), cells.end());
    }
    splitLine(trimmed(lines[shape.firstLine - 1]), shape.delimiter, cells);
    const auto nameOf = [&](std::size_t i) {
        return i < shape.names.size() ? shape.names[i] : std::string{};
    };
    std::optional<std::size_t> first;
    std::optional<std::size_t> named;
    for (std::size_t i = shape.timeColumn + (shape.timeApart ? 2 : 1); i < cells.size(); ++i) {
        if (!numberIn(cells[i], shape.decimalComma)) continue;
        if (meansHumidity(nameOf(i))) {
            if (!shape.humidityColumn) shape.humidityColumn = i;
            continue;
        }
        if (!first) first = i;
        if (!named && meansTemperature(nameOf(i))) named = i;
    }
    if (named || first) shape.celsiusColumn = named ? *named : *first;
    if (!hints.celsius.empty()) {
        const auto column = hinted(name, shape, hints.celsius, cells.size());
        if (!column) return column.refusal();
        shape.celsiusColumn = *column;
    } else if (!named && !first) {
        return Refusal{name, phrase("found no column with temperatures, expected one beside the times")};
    }
    if (!hints.humidity.empty()) {
        const auto column = hinted(name, shape, hints.humidity, cells.size());
        if (!column) return column.refusal();
        shape.humidityColumn = *column;
    }
    const std::string unit = nameOf(shape.celsiusColumn);
    shape.byHeat =
        !hints.fahrenheit && !meansFahrenheit(unit) && !meansCelsius(unit) && readsAsFahrenheit(lines, shape);
    shape.fahrenheit = hints.fahrenheit.value_or(meansFahrenheit(unit) || shape.byHeat);
    return shape;
}

} // namespace warmbench::exchange
