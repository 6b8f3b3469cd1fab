#include "core/exchange/logger/logger_file.h"

#include <algorithm>

namespace warmbench::exchange {
namespace {

constexpr std::size_t wrongTold = 5;
constexpr double coldest = -60;
constexpr double hottest = 100;
constexpr double longestStepHours = 3;

/// Reads line by line.
class LineReader {
public:
    LineReader(const LoggerShape& shape, const Clock& clock, LoggerFile& file)
        : m_shape(shape), m_clock(clock), m_file(file) {}

    void read(std::string_view line, std::size_t number) {
        if (!line.empty() && line.back() == '\r') line.remove_suffix(1);
        if (line.find_first_not_of(" \t") == std::string_view::npos) return;
        ++m_file.lines;
        splitLine(line, m_shape.delimiter, m_cells);
        const auto shown =
            shownIn(cell(m_shape.timeColumn),
                    m_shape.timeApart ? cell(m_shape.timeColumn + 1) : std::string_view{}, m_shape.order);
        if (!shown)
            return wrong(number,
                         phrase("found '%1', expected a time", std::string(cell(m_shape.timeColumn))));
        const std::string_view temperature = cell(m_shape.celsiusColumn);
        const auto value = numberIn(temperature, m_shape.decimalComma);
        if (!value) {
            if (temperature.empty()) {
                ++m_file.missing;
                return;
            }
            return wrong(number, phrase("found '%1', expected a temperature", std::string(temperature)));
        }
        LoggerReading reading;
        reading.celsius = m_shape.fahrenheit ? (*value - 32) / 1.8 : *value;
        if (reading.celsius < coldest || reading.celsius > hottest)
            return wrong(number, phrase("found %1, expected a temperature from -60 to 100 °C",
                                        std::string(temperature)));
        const auto previous =
            m_file.readings.empty() ? std::nullopt : std::optional(m_file.readings.back().second);
        reading.second = shown->offset ? shown->seconds : m_clock.utc(shown->seconds, previous);
        if (m_shape.humidityColumn)
            if (const auto humidity = numberIn(cell(*m_shape.humidityColumn), m_shape.decimalComma);
                humidity && *humidity >= 0 && *humidity <= 100)
                reading.humidity = humidity;
        if (previous && reading.second < *previous) ++m_file.outOfOrder;
        m_file.readings.push_back(reading);
    }

private:
    [[nodiscard]] std::string_view cell(std::size_t column) const {
        return column < m_cells.size() ? m_cells[column] : std::string_view{};
    }
    void wrong(std::size_t number, const Phrase& what) {
        if (m_file.wrongLines++ < wrongTold)
            m_file.wrong.push_back(phrase("line %1: %2", number, what).text());
    }

    const LoggerShape& m_shape;
    const Clock& m_clock;
    LoggerFile& m_file;
    std::vector<std::string_view> m_cells;
};

void putInOrder(LoggerFile& file) {
    auto& readings = file.readings;
    if (file.outOfOrder > 0)
        std::stable_sort(readings.begin(), readings.end(),
                         [](const LoggerReading& a, const LoggerReading& b) { return a.second < b.second; });
    std::size_t kept = 0;
    for (const LoggerReading& reading : readings) {
        if (kept > 0 && readings[kept - 1].second == reading.second) {
            ++file.duplicates;
            if (readings[kept - 1].celsius != reading.celsius) ++file.contradictions;
            continue;
        }
        readings[kept++] = reading;
    }
    readings.resize(kept);
    for (std::size_t i = 1; i < readings.size(); ++i) {
        const double hours = static_cast<double>(readings[i].second - readings[i - 1].second) / 3600;
        if (hours <= longestStepHours) continue;
        ++file.gaps;
        file.gapHours += hours;
    }
}

} // namespace

Result<LoggerFile> readLogger(const std::string& name, std::string_view text, const Clock& clock,
                              const LoggerHints& hints) {
    if (text.substr(0, 3) == "\xEF\xBB\xBF") text.remove_prefix(3);
    auto shape = shapeOf(name, text, hints);
    if (!shape) return shape.refusal();
    LoggerFile file;
    file.shape = std::move(*shape);
    LineReader reader(file.shape, clock, file);
    constexpr std::size_t bytesInALine = 24;
    file.readings.reserve(text.size() / bytesInALine);
    for (std::size_t number = 1; !text.empty(); ++number) {
        const std::size_t end = text.find('\n');
        if (number >= file.shape.firstLine) reader.read(text.substr(0, end), number);
        if (end == std::string_view::npos) break;
        text.remove_prefix(end + 1);
    }
    if (file.wrongLines * 2 > file.lines || file.readings.empty())
        return Refusal{name, phrase("%1 of %2 lines can't be read, such as %3", file.wrongLines, file.lines,
                                    file.wrong.empty() ? phrase("those without a temperature")
                                                       : Phrase(file.wrong.front()))};
    putInOrder(file);
    return file;
}

} // namespace warmbench::exchange
