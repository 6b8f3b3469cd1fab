#include "core/exchange/table/readings.h"

#include "core/exchange/csv/csv_reader.h"
#include "core/exchange/csv/moment.h"
#include "core/quantity/number.h"

#include <utility>

namespace warmbench::exchange {
namespace {

enum ReadingColumn : std::size_t { timeColumn, celsiusColumn };
constexpr double absoluteZero = -273.15;
constexpr double hottest = 1000;
constexpr double microsecondsPerHour = 3.6e9;

} // namespace

Result<ReadingTable> readReadings(const std::string& name, std::string text) {
    auto opened = CsvReader::open(name, std::move(text), {{"time"}, {"celsius"}});
    if (!opened) return opened.refusal();
    CsvReader& reader = *opened;
    ReadingTable table;
    Moment first;
    Moment previous;
    while (true) {
        const auto more = reader.next();
        if (!more) return more.refusal();
        if (!*more) break;
        const auto moment = momentFromIso(reader.cell(timeColumn));
        if (!moment) return reader.refusal(timeColumn, "an ISO 8601 time such as 2027-03-01T06:30");
        if (table.readings.empty()) {
            first = previous = *moment;
            table.from = reader.cell(timeColumn);
        }
        if (moment->offset != first.offset)
            return reader.refusal(timeColumn, first.offset ? "an offset from UTC as in the lines before"
                                                           : "no offset from UTC as in the lines before");
        if (moment->microseconds < previous.microseconds)
            return reader.refusal(timeColumn, "a time not before " + table.to + " of the line before");
        const auto celsius = numberFromText(reader.cell(celsiusColumn));
        if (!celsius || *celsius < absoluteZero || *celsius > hottest)
            return reader.refusal(celsiusColumn, "degrees Celsius from -273.15 to 1000");
        const auto since = static_cast<double>(moment->microseconds - first.microseconds);
        table.readings.push_back({since / microsecondsPerHour, *celsius});
        table.to = reader.cell(timeColumn);
        previous = *moment;
    }
    if (table.readings.empty())
        return Refusal{name, phrase("found no readings, expected a line for each reading")};
    return table;
}

} // namespace warmbench::exchange
