#include "app/storage/copy_told.h"

#include "app/storage/undo_steps.h"

#include <algorithm>
#include <map>
#include <string_view>

namespace warmbench::app {
namespace {

/// The codes of batches that somebody weaned by these steps and did not take back.
std::vector<std::string> weanedBy(const std::vector<JournalLine>& lines) {
    constexpr std::string_view wean = "Wean ";
    std::map<std::string, int> times;
    for (const JournalLine& line : lines) {
        const auto [way, step] = UndoSteps::told(line.words);
        if (step.starts_with(wean))
            times[step.substr(wean.size())] += way == UndoSteps::Way::TakenBack ? -1 : 1;
    }
    std::vector<std::string> codes;
    for (const auto& [code, count] : times)
        if (count > 0) codes.push_back(code);
    return codes;
}

} // namespace

Result<CopyTold> toldByCopy(const BookFile& home, BookFile& copy) {
    const auto here = home.journalLines();
    if (!here) return here.refusal();
    const auto there = copy.journalLines();
    if (!there) return there.refusal();
    const auto parted = std::mismatch(here->begin(), here->end(), there->begin(), there->end()).second;
    CopyTold told{parted != there->begin(), {parted, there->end()}, {}};
    const std::vector<std::string> codes = weanedBy(told.own);
    if (codes.empty() || !told.isCopy) return told;
    const auto before = copy.bookAfter(std::prev(parted)->seq);
    if (!before) return before.refusal();
    told.weaned = round::weanedIn(copy.book(), *before, codes);
    return told;
}

} // namespace warmbench::app
