#include "ui/setup/refit_words.h"

#include "core/book/query.h"
#include "ui/words/number_ranges.h"
#include "ui/words/say.h"

namespace warmbench::ui {
namespace {

/// `27-048-A, Fuchsia magellanica, containers 1 to 4`, and the whole batch without its numbers.
QString named(const HouseBook& book, const RefitEffect::Containers& some, const Wording& wording) {
    const Batch& batch = book.get<Batch>(some.batch);
    const QString name = text(batch.code) + QStringLiteral(", ") + text(book.get<Taxon>(batch.taxon).name);
    if (some.containers.size() == batch.containers.size()) return name;
    const QString numbers = numberRanges(some.containers, wording);
    return some.containers.size() == 1 ? say("%1, container %2").arg(name, numbers)
                                       : say("%1, containers %2").arg(name, numbers);
}

} // namespace

QStringList refitWords(const HouseBook& book, const RefitEffect& effect, const Wording& wording) {
    QStringList words;
    for (const ZoneId id : effect.cut)
        words += say("Zone %1 is cut to what is left of its bench.").arg(text(zoneTitle(book, id)));
    for (const ZoneId id : effect.gone) words += say("Zone %1 is taken away.").arg(text(zoneTitle(book, id)));
    for (const auto& some : effect.unplaced)
        words += say("%1: loses its place from %2 on and waits in the tray; its containers are kept.")
                     .arg(named(book, some, wording), wording.shortDate(some.from));
    for (const MatRun& run : effect.runs)
        words += say("The mat of %1 no longer runs at %2 from %3 to %4.")
                     .arg(text(zoneTitle(book, run.zone)), wording.temperature(run.setPoint),
                          wording.shortDate(run.from), wording.shortDate(run.to));
    for (const auto& some : effect.redrawn)
        words += say("%1: its days there from %2 still count, shown on other slots of the zone.")
                     .arg(named(book, some, wording), wording.shortDate(some.from));
    for (const auto& some : effect.unshown)
        words +=
            say("%1: no slot is left to show its days there from %2 on; they still count, as others of the "
                "batch stood there.")
                .arg(named(book, some, wording), wording.shortDate(some.from));
    for (const auto& some : effect.uncounted)
        words += say("%1: no slot is left to show its days there from %2 on; they no longer count. The "
                     "journal keeps them.")
                     .arg(named(book, some, wording), wording.shortDate(some.from));
    return words;
}

} // namespace warmbench::ui
