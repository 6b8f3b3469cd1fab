#include "ui/shell/find_entries.h"

#include "core/book/query.h"
#include "ui/words/say.h"
#include "ui/words/wording.h"

#include <algorithm>

namespace warmbench::ui {
namespace {

QString folded(const QString& words) {
    return words.toCaseFolded().replace(u'×', u'x');
}

/// What is typed, word by word.
class Typed {
public:
    explicit Typed(const QString& typed) : m_words(folded(typed).split(u' ', Qt::SkipEmptyParts)) {
        for (const QString& word : m_words) {
            bool whole = false;
            const int number = word.toInt(&whole);
            if (whole)
                m_numbers.push_back(number);
            else
                m_names += word;
        }
    }
    [[nodiscard]] bool empty() const { return m_words.isEmpty(); }
    [[nodiscard]] bool allIn(const QString& words) const { return allOf(m_words, words); }
    /// Row and column, from 0, where a zone's words are typed with two numbers behind.
    [[nodiscard]] std::optional<Slot> slotOf(const QString& zoneWords, const Zone& zone) const {
        if (m_numbers.size() < 2 || m_names.isEmpty() || !beginWords(zoneWords)) return std::nullopt;
        const Slot slot{m_numbers[m_numbers.size() - 2] - 1, m_numbers.back() - 1};
        const bool inside = slot.row >= 0 && slot.col >= 0 && slot.row < zone.rows && slot.col < zone.cols;
        return inside ? std::optional(slot) : std::nullopt;
    }

private:
    static bool allOf(const QStringList& parts, const QString& words) {
        const QString where = folded(words);
        return std::all_of(parts.begin(), parts.end(),
                           [&](const QString& part) { return where.contains(part); });
    }

    /// Whether each name typed begins a word; a zone's name may be one letter, which stands in many words.
    [[nodiscard]] bool beginWords(const QString& words) const {
        const QString where = u' ' + folded(words);
        return std::all_of(m_names.begin(), m_names.end(),
                           [&](const QString& name) { return where.contains(u' ' + name); });
    }

    QStringList m_words;
    QStringList m_names;
    std::vector<int> m_numbers;
};

FindEntry slotEntry(const HouseBook& book, Day day, const QString& zoneWords, ZoneId zone, Slot slot) {
    const QString where = say("%1, row %2, column %3").arg(zoneWords).arg(slot.row + 1).arg(slot.col + 1);
    for (const StayId id : book.staysMeeting(zone, day, day + 1)) {
        const Stay& stay = book.get<Stay>(id);
        const Batch& batch = book.get<Batch>(stay.batch);
        for (const Place& place : stay.places)
            if (place.slots.covers(slot))
                return {say("%1: %2, %3")
                            .arg(where, text(containerCode(batch.code, place.container)),
                                 text(book.get<Taxon>(batch.taxon).name)),
                        stay.batch};
    }
    return {say("%1: free").arg(where), zone};
}

} // namespace

QList<FindEntry> findEntries(const HouseBook& book, Day day, const QString& typed, qsizetype most) {
    QList<FindEntry> entries;
    const Typed wanted(typed);
    if (wanted.empty()) return entries;
    const QString dot = QStringLiteral(" · ");
    for (const auto& [id, zone] : book.all<Zone>()) {
        const QString words =
            say("Zone %1").arg(text(zone.name)) + dot + text(book.get<Bench>(zone.bench).name);
        if (const auto slot = wanted.slotOf(words, zone))
            entries.append(slotEntry(book, day, words, id, *slot));
        else if (wanted.allIn(words))
            entries.append({words, id});
    }
    for (const auto& [id, batch] : book.all<Batch>()) {
        if (entries.size() >= most) break;
        const Taxon& taxon = book.get<Taxon>(batch.taxon);
        QString tail = dot + text(batch.code);
        if (batch.target) tail += dot + say("target %1").arg(text(book.get<Target>(*batch.target).name));
        const QString name = text(taxon.name);
        if (wanted.allIn(name + tail)) {
            entries.append({name + tail, id});
            continue;
        }
        for (const auto* names : {&taxon.synonyms, &taxon.commonNames})
            for (const std::string& other : *names) {
                const QString words = text(other) + QStringLiteral(" (") + name + u')' + tail;
                if (wanted.allIn(words)) entries.append({words, id});
            }
    }
    return entries;
}

} // namespace warmbench::ui
