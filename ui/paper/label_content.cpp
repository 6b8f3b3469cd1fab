#include "ui/paper/label_content.h"

#include "core/book/query.h"
#include "core/crop/recipe_figures.h"
#include "core/crop/safety.h"
#include "ui/words/taxon_text.h"

#include <algorithm>
#include <tuple>

namespace warmbench::ui {

namespace {

/// As one word, which no line breaks.
QString together(QString words) {
    return words.replace(u' ', QChar::Nbsp);
}

} // namespace

LabelContent labelOf(const HouseBook& book, const Batch& batch, int container, const Wording& wording) {
    LabelContent label;
    label.code = text(batch.code);
    label.title = text(containerCode(batch.code, container));
    label.taxonHtml = taxonHtml(book.get<Taxon>(batch.taxon).name);
    label.struck = wording.wood(batch.recipe.wood) + QStringLiteral(", ") +
                   together(wording.shortDate(batch.strikeDay) + QStringLiteral(" ") +
                            QString::number(batch.strikeDay.year()));
    QStringList recipe;
    if (!isWithoutHormone(batch.recipe.hormone.value)) recipe << text(hormoneText(batch.recipe));
    QStringList medium = wording.medium(batch.recipe.medium.value).split(QStringLiteral(", "));
    for (QString& part : medium) part = together(part);
    recipe << medium.join(QStringLiteral(", ")) << wording.temperature(batch.recipe.rootZoneIdeal.value);
    label.recipe = recipe.join(QStringLiteral("; "));
    return label;
}

std::vector<LabelContent> labelsOf(const HouseBook& book, const std::vector<BatchId>& batches,
                                   const Wording& wording) {
    std::vector<LabelContent> labels;
    for (const BatchId id : batches) {
        const Batch& batch = book.get<Batch>(id);
        for (const BatchContainer& container : batch.containers)
            labels.push_back(labelOf(book, batch, container.number, wording));
    }
    return labels;
}

std::vector<BatchId> batchesToLabel(const HouseBook& book, Day from, Day to) {
    std::vector<BatchId> found;
    for (const auto& [id, batch] : book.all<Batch>())
        if (batch.state != BatchState::Ended && from <= batch.strikeDay && batch.strikeDay < to)
            found.push_back(id);
    std::sort(found.begin(), found.end(), [&](BatchId a, BatchId b) {
        const Batch& one = book.get<Batch>(a);
        const Batch& other = book.get<Batch>(b);
        return std::tie(one.strikeDay, one.code) < std::tie(other.strikeDay, other.code);
    });
    return found;
}

} // namespace warmbench::ui
