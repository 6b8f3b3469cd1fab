#include "ui/form/taxon_field.h"

#include "ui/form/fields.h"
#include "ui/words/phrase_words.h"
#include "ui/words/taxon_text.h"

#include <QCheckBox>
#include <QCompleter>
#include <QLabel>
#include <QLineEdit>
#include <QStandardItemModel>
#include <QVBoxLayout>

namespace warmbench::ui {
namespace {

constexpr int takenName = Qt::UserRole;

/// Finds what is typed anywhere in the words of an offer, and puts in the name that it is taken by.
class TaxonCompleter : public QCompleter {
public:
    TaxonCompleter(const HouseBook& book, const RecipeLibrary& library, QObject* parent)
        : QCompleter(parent) {
        auto* offers = new QStandardItemModel(this);
        for (const season::TaxonOffer& one : season::taxonOffers(book, library)) {
            auto* item = new QStandardItem(text(one.words));
            item->setData(text(one.name), takenName);
            offers->appendRow(item);
        }
        setModel(offers);
        setCaseSensitivity(Qt::CaseInsensitive);
        setFilterMode(Qt::MatchContains);
    }
    [[nodiscard]] QString pathFromIndex(const QModelIndex& index) const override {
        return index.data(takenName).toString();
    }
};

} // namespace

TaxonField::TaxonField(const HouseBook& book, const RecipeLibrary& library, TaxonId taxon, QWidget* parent)
    : QWidget(parent), m_book(book), m_library(library), m_name(new QLineEdit(this)),
      m_understood(new QLabel(this)), m_own(new QCheckBox(tr("A taxon of my own, new to Warmbench"), this)) {
    m_name->setObjectName(QStringLiteral("taxonName"));
    m_name->setAccessibleName(tr("Taxon"));
    m_name->setPlaceholderText(tr("a botanical or common name"));
    m_understood->setObjectName(QStringLiteral("taxonUnderstood"));
    m_understood->setWordWrap(true);
    m_understood->setAlignment(Qt::AlignLeft | Qt::AlignTop);
    // Two lines are kept for what is said while one types, so that the fields below stay where they are.
    m_understood->setMinimumHeight(2 * m_understood->fontMetrics().lineSpacing());
    m_own->setObjectName(QStringLiteral("taxonOwn"));
    QSizePolicy kept = m_own->sizePolicy();
    kept.setRetainSizeWhenHidden(true);
    m_own->setSizePolicy(kept);
    m_name->setCompleter(new TaxonCompleter(book, library, this));
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(m_name);
    column->addWidget(m_understood);
    column->addWidget(m_own);
    setFocusProxy(m_name);
    if (const Taxon* chosen = book.find<Taxon>(taxon)) m_name->setText(text(chosen->name));
    connect(m_name, &QLineEdit::textChanged, this, &TaxonField::tell);
    tell();
}

Result<season::TaxonChoice> TaxonField::choice() const {
    const std::string name = said(*m_name);
    return m_own->isChecked() ? season::chooseOwnTaxon(m_book, m_library, name)
                              : season::chooseTaxon(m_book, m_library, name);
}

void TaxonField::tell() {
    const std::string name = said(*m_name);
    const auto known = season::chooseTaxon(m_book, m_library, name);
    m_own->setVisible(!known && !name.empty());
    if (known) m_own->setChecked(false);
    m_understood->setText(name.empty() ? QString()
                          : known      ? taxonHtml(known->taxon.name)
                                       : told(known.refusal().what).toHtmlEscaped());
}

} // namespace warmbench::ui
