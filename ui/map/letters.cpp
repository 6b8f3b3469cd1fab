#include "ui/map/letters.h"

#include <algorithm>
#include <queue>
#include <vector>

namespace warmbench::ui {
namespace {

QString letterCode(int number) {
    QString code;
    for (int rest = number + 1; rest > 0; rest = (rest - 1) / 26)
        code.prepend(QChar(u'A' + static_cast<char16_t>((rest - 1) % 26)));
    return code;
}

/// The day from which a batch's code may be used again: the first on which nothing of it stands any more,
/// once it has ended; never before.
Day goneBy(const HouseBook& book, const Batch& batch) {
    if (batch.state != BatchState::Ended) return Day::last();
    Day gone = batch.strikeDay + 1;
    for (const StayId id : book.staysOf(batch.id)) gone = std::max(gone, book.get<Stay>(id).to);
    return gone;
}

} // namespace

Letters::Letters(const HouseBook& book) {
    std::vector<const Batch*> batches;
    for (const auto& [id, batch] : book.all<Batch>()) batches.push_back(&batch);
    std::stable_sort(batches.begin(), batches.end(),
                     [](const Batch* a, const Batch* b) { return a->strikeDay < b->strikeDay; });
    using Use = std::pair<Day, int>;
    std::priority_queue<Use, std::vector<Use>, std::greater<>> inUse;
    std::priority_queue<int, std::vector<int>, std::greater<>> free;
    int next = 0;
    for (const Batch* batch : batches) {
        for (; !inUse.empty() && inUse.top().first <= batch->strikeDay; inUse.pop())
            free.push(inUse.top().second);
        int number = next;
        if (free.empty()) {
            ++next;
        } else {
            number = free.top();
            free.pop();
        }
        inUse.emplace(goneBy(book, *batch), number);
        m_codes.insert(batch->id.number, letterCode(number));
    }
}

} // namespace warmbench::ui
