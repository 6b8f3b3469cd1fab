#include "core/exchange/calendar/season_events.h"

#include "core/book/query.h"
#include "core/crop/recipe_figures.h"
#include "core/crop/safety.h"
#include "core/round/round.h"

#include <algorithm>

namespace warmbench::exchange {
namespace {

std::string placeOf(const HouseBook& book, const Stay& stay) {
    return houseOf(book, book.get<Zone>(stay.zone)).name + " · " + zoneTitle(book, stay.zone);
}

std::string recipeLines(const HouseBook& book, const Batch& batch) {
    const Recipe& recipe = batch.recipe;
    std::string lines =
        std::to_string(batch.containers.size()) + " × " + book.get<ContainerType>(batch.containerType).name;
    if (batch.stock) lines += "\nfrom " + book.get<Stock>(*batch.stock).name;
    lines += "\n" + std::string(woodNames[static_cast<std::size_t>(recipe.wood)]);
    if (!isWithoutHormone(recipe.hormone.value)) lines += "\n" + hormoneText(recipe);
    lines += "\n" + valueText(recipe.medium.value);
    if (batch.target) lines += "\nfor " + book.get<Target>(*batch.target).name;
    return lines;
}

/// Builds the events of one batch.
class BatchEvents {
public:
    BatchEvents(const HouseBook& book, const Batch& batch, Day from, std::vector<SeasonEvent>& events)
        : m_book(book), m_batch(batch), m_stays(staysInOrder(book, batch.id)), m_from(from),
          m_events(events) {}

    void add() {
        const std::string place = m_stays.empty() ? std::string() : placeOf(m_book, *m_stays.front());
        if (m_batch.state == BatchState::Planned)
            add(EventKind::Strike, 1, m_batch.strikeDay,
                "Strike " + std::to_string(m_batch.cuttings()) + " cuttings of", place,
                recipeLines(m_book, m_batch));
        Day rootingEnd = m_batch.strikeDay;
        for (const Stay* stay : m_stays)
            if (stay->stage == Stage::Rooting) rootingEnd = std::max(rootingEnd, stay->to);
        const round::Rhythm rhythm = round::rhythmOf(m_batch.recipe.wood);
        int look = 1;
        for (Day day = m_batch.strikeDay + rhythm.firstLook; day < rootingEnd; day = day + rhythm.between)
            add(EventKind::Check, look++, day, "Check the roots of", place, {});
        const auto weaning = std::find_if(m_stays.begin(), m_stays.end(),
                                          [](const Stay* stay) { return stay->stage == Stage::Weaning; });
        if (weaning != m_stays.end())
            add(EventKind::Wean, 1, (*weaning)->from, "Wean", placeOf(m_book, **weaning), {});
        if (!m_stays.empty())
            add(EventKind::PotOn, 1, m_stays.back()->to, "Pot on", placeOf(m_book, *m_stays.back()), {});
    }

private:
    void add(EventKind kind, int ordinal, Day day, const std::string& verb, std::string place,
             std::string description) {
        if (day < m_from) return;
        m_events.push_back({kind, m_batch.id, ordinal, day,
                            verb + " " + m_book.get<Taxon>(m_batch.taxon).name + " (" + m_batch.code + ")",
                            std::move(place), std::move(description)});
    }

    const HouseBook& m_book;
    const Batch& m_batch;
    std::vector<const Stay*> m_stays;
    Day m_from;
    std::vector<SeasonEvent>& m_events;
};

} // namespace

std::vector<SeasonEvent> seasonEvents(const HouseBook& book, Day from) {
    std::vector<SeasonEvent> events;
    for (const auto& [id, batch] : book.all<Batch>())
        if (batch.state != BatchState::Ended) BatchEvents(book, batch, from, events).add();
    std::stable_sort(events.begin(), events.end(),
                     [](const SeasonEvent& a, const SeasonEvent& b) { return a.day < b.day; });
    return events;
}

} // namespace warmbench::exchange
