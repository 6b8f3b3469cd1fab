#include "core/round/results.h"

#include "core/book/query.h"
#include "core/exchange/csv/csv_reader.h"
#include "core/round/entry.h"

#include <algorithm>
#include <charconv>
#include <tuple>

namespace warmbench::round {
namespace {

using exchange::CsvReader;
namespace column {
enum Place : std::size_t { batch, container, examined, rooted, callused, alive, dead, grade, day, note };
}
constexpr int mostCuttings = 100'000;

/// The whole number in a cell, `otherwise` where it is empty; nothing for anything else.
std::optional<int> countIn(std::string_view cell, int otherwise) {
    if (cell.empty()) return otherwise;
    int value = 0;
    const auto [end, error] = std::from_chars(cell.data(), cell.data() + cell.size(), value);
    if (error != std::errc{} || end != cell.data() + cell.size() || value < 0 || value > mostCuttings)
        return std::nullopt;
    return value;
}

/// The check that a row tells, or what is wrong with it.
Result<RootCheck> checkIn(const HouseBook& book, const CsvReader& reader, Day day) {
    RootCheck check;
    const Batch* found = findBatch(book, reader.cell(column::batch));
    if (!found) return reader.refusal(column::batch, "the code of a batch in this book");
    check.batch = found->id;
    check.day = day;
    if (!reader.cell(column::day).empty()) {
        const auto read = Day::fromIso(reader.cell(column::day));
        if (!read) return reader.refusal(column::day, "a date such as 2027-02-01");
        check.day = *read;
    }
    for (const auto& [place, into] : {std::pair{column::container, &check.container},
                                      {column::examined, &check.examined},
                                      {column::rooted, &check.rooted},
                                      {column::callused, &check.callused},
                                      {column::dead, &check.dead}}) {
        const auto count = countIn(reader.cell(place), 0);
        if (!count) return reader.refusal(place, "a whole number");
        *into = *count;
    }
    const auto left = countIn(reader.cell(column::alive),
                              std::max(0, check.examined - check.rooted - check.callused - check.dead));
    if (!left) return reader.refusal(column::alive, "a whole number");
    check.alive = *left;
    if (!reader.cell(column::grade).empty()) {
        const auto read = countIn(reader.cell(column::grade), 0);
        if (!read || *read > 5) return reader.refusal(column::grade, "a root grade from 0 to 5");
        check.grade = read;
    }
    check.note = reader.cell(column::note);
    return check;
}

} // namespace

Result<Results> readResults(const HouseBook& book, const std::string& name, std::string text, Day day) {
    auto opened = CsvReader::open(name, std::move(text),
                                  {{"batch"},
                                   {"container"},
                                   {"examined"},
                                   {"rooted"},
                                   {"callused", false},
                                   {"alive", false},
                                   {"dead", false},
                                   {"grade", false},
                                   {"day", false},
                                   {"note", false}});
    if (!opened) return opened.refusal();
    CsvReader& reader = *opened;
    Results results;
    std::vector<std::tuple<BatchId, int, Day>> seen;
    while (true) {
        const auto more = reader.next();
        if (!more) return more.refusal();
        if (!*more) break;
        if (reader.cell(column::examined).empty()) continue;
        auto check = checkIn(book, reader, day);
        if (!check) {
            results.wrong.push_back(check.refusal());
            continue;
        }
        if (const auto wrong = wrongWith(book, *check, day)) {
            results.wrong.push_back(reader.refusal(wrong->text()));
            continue;
        }
        const std::tuple key(check->batch, check->container, check->day);
        if (std::find(seen.begin(), seen.end(), key) != seen.end())
            results.questions.push_back(reader.refusal("the container stands in the file twice").text());
        else if (const auto question = questionAbout(book, *check))
            results.questions.push_back(reader.refusal(question->text()).text());
        seen.push_back(key);
        results.checks.push_back(std::move(*check));
    }
    return results;
}

} // namespace warmbench::round
