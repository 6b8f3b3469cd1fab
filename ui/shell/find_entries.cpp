#include "ui/shell/find_entries.h"

#include "core/book/query.h"
#include "ui/words/wording.h"

#include <QCoreApplication>

namespace warmbench::ui {

QList<FindEntry> findEntries(const HouseBook& book) {
    QList<FindEntry> entries;
    const QString dot = QStringLiteral(" · ");
    for (const auto& [id, zone] : book.all<Zone>())
        entries.append({QCoreApplication::translate("FindEntry", "Zone %1").arg(text(zone.name)) + dot +
                            text(book.get<Bench>(zone.bench).name),
                        id});
    for (const auto& [id, batch] : book.all<Batch>()) {
        const Taxon& taxon = book.get<Taxon>(batch.taxon);
        QString tail = dot + text(batch.code);
        if (batch.target)
            tail += dot + QCoreApplication::translate("FindEntry", "target %1")
                              .arg(text(book.get<Target>(*batch.target).name));
        entries.append({text(taxon.name) + tail, id});
        for (const auto* names : {&taxon.synonyms, &taxon.commonNames})
            for (const std::string& name : *names)
                entries.append({text(name) + QStringLiteral(" (") + text(taxon.name) + u')' + tail, id});
    }
    return entries;
}

} // namespace warmbench::ui
