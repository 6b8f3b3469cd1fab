#include "ui/dayline/stay_bars.h"

#include "core/book/container_numbers.h"
#include "core/book/query.h"
#include "core/forecast/batch_forecast.h"
#include "ui/words/say.h"

namespace warmbench::ui {
namespace {

StayBar barOf(const HouseBook& book, const Stay& stay, Day today, const Wording& wording) {
    const Batch& batch = book.get<Batch>(stay.batch);
    StayBar bar;
    bar.stay = stay.id;
    bar.from = stay.from;
    bar.to = stay.to;
    bar.progress = progressOn(book, stay, std::clamp(today, stay.from, stay.to - 1), today);
    bar.beginsFixed = batch.state != BatchState::Planned && stay.from <= today;
    const QString zone = text(zoneTitle(book, stay.zone));
    QString containers;
    if (stay.places.size() < batch.containers.size()) {
        std::vector<int> numbers;
        for (const Place& place : stay.places) numbers.push_back(place.container);
        containers = QStringLiteral(" (") + text(containerNumbers(numbers)) + u')';
    }
    bar.label = wording.stage(stay.stage) + containers + QStringLiteral(" · ") + zone;
    bar.sentence = say("%1, %2, in %3 from %4 to %5")
                       .arg(text(batch.code) + containers, wording.stage(stay.stage), zone,
                            wording.shortDate(stay.from), wording.shortDate(stay.to));
    return bar;
}

} // namespace

std::vector<StayBar> stayBars(const HouseBook& book, BatchId batch, Day today, const Wording& wording) {
    std::vector<StayBar> bars;
    std::optional<std::size_t> rooting;
    for (const Stay* stay : staysInOrder(book, batch)) {
        if (stay->stage == Stage::Rooting) rooting = bars.size();
        bars.push_back(barOf(book, *stay, today, wording));
    }
    const Batch& one = book.get<Batch>(batch);
    if (rooting && one.state == BatchState::Struck && one.strikeDay <= today)
        if (const auto forecast = forecast::BatchForecast::make(book, one, today))
            bars[*rooting].ready = forecast->readyDay(0.5);
    return bars;
}

std::vector<StayBar> stayBars(const HouseBook& book, ZoneId zone, Day from, Day to, Day today,
                              const Wording& wording) {
    std::vector<StayBar> bars;
    for (const StayId id : book.staysMeeting(zone, from, to)) {
        const Stay& stay = book.get<Stay>(id);
        bars.push_back(barOf(book, stay, today, wording));
        bars.back().label = text(book.get<Batch>(stay.batch).code) + QStringLiteral(" · ") +
                            text(book.get<Taxon>(book.get<Batch>(stay.batch).taxon).name);
    }
    return bars;
}

} // namespace warmbench::ui
