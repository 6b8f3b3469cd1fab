#pragma once

#include <QList>
#include <QString>

#include <string_view>

namespace warmbench::ui {

/// A piece of a botanical name that is set in one way.
struct TaxonRun {
    QString text;
    bool italic = false;
    friend bool operator==(const TaxonRun&, const TaxonRun&) = default;
};

/// A botanical name as it is printed: Latin in italics; the cross, ranks (`subsp.`, `var.`, `f.`) and
/// cultivars in single quotes upright, the quotes turned.
[[nodiscard]] QList<TaxonRun> taxonRuns(std::string_view name);
/// The same as rich text.
[[nodiscard]] QString taxonHtml(std::string_view name);

} // namespace warmbench::ui
