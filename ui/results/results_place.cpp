#include "ui/results/results_place.h"

#include "core/book/query.h"
#include "ui/form/labels.h"
#include "ui/form/table.h"
#include "ui/results/take_bar.h"
#include "ui/words/phrase_words.h"

#include <QComboBox>
#include <QDate>
#include <QFormLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QTabWidget>
#include <QTreeWidget>
#include <QVBoxLayout>

#include <algorithm>
#include <cmath>
#include <set>

namespace warmbench::ui {
namespace {

enum TakeColumn : int {
    TakeGroup,
    TakeBatches,
    TakePlants,
    TakeShare,
    TakeBars,
    TakeRecipe,
    TakeAgainst,
    TakeSource
};
enum TrialColumn : int { TrialWhat, TrialFirst, TrialSecond, TrialDifference, TrialBars, TrialVerdict };
enum OwnColumn : int { OwnRecipe, OwnBatches, OwnCuttings, OwnTake, OwnDays };

constexpr double levels[] = {0.9, 0.95, 0.99};

void alignRight(QTreeWidgetItem& item, std::initializer_list<int> columns) {
    for (const int column : columns) item.setTextAlignment(column, Qt::AlignRight | Qt::AlignVCenter);
}

/// Batches that have ended of a recipe's taxon and wood, and the cuttings in them.
std::pair<int, int> endedOf(const HouseBook& book, const Recipe& recipe) {
    std::pair<int, int> found{0, 0};
    for (const auto& [id, batch] : book.all<Batch>())
        if (batch.state == BatchState::Ended && batch.taxon == recipe.taxon &&
            batch.recipe.wood == recipe.wood) {
            ++found.first;
            found.second += batch.cuttings();
        }
    return found;
}

} // namespace

ResultsPlace::ResultsPlace(QWidget* parent)
    : Place(QStringLiteral("results"), tr("Results"), parent), m_tabs(new QTabWidget(this)),
      m_by(new QComboBox(this)), m_level(new QComboBox(this)), m_year(new QComboBox(this)),
      m_words(wrappedLabel(this, "quiet")),
      m_takes(makeTable(QStringLiteral("takeTable"), tr("What was got"),
                        {tr("Group"), tr("Batches"), tr("Plants of cuttings"), tr("Take"), QString(),
                         tr("Recipe"), tr("Against it"), tr("Source")},
                        this)),
      m_takeBars(new TakeBarColumn(0, 100, this)), m_trialWords(wrappedLabel(this, "quiet")),
      m_trials(makeTable(
          QStringLiteral("trialTable"), tr("Trials"),
          {tr("Trial"), tr("First way"), tr("Second way"), tr("Difference"), QString(), tr("What it says")},
          this)),
      m_trialBars(new TakeBarColumn(-100, 100, this)), m_verdict(wrappedLabel(this)),
      m_ownList(makeTable(QStringLiteral("ownTable"), tr("Recipes with batches of your own"),
                          {tr("Recipe"), tr("Batches"), tr("Cuttings"), tr("Take in the recipe"),
                           tr("Days to root in the recipe")},
                          this)),
      m_ownWords(wrappedLabel(this)),
      m_takeOver(new QPushButton(tr("&Use these figures in the recipe"), this)),
      m_refusal(new TroubleLabel(QStringLiteral("resultsRefusal"), this)) {
    m_by->setObjectName(QStringLiteral("takeBy"));
    m_level->setObjectName(QStringLiteral("takeLevel"));
    m_year->setObjectName(QStringLiteral("takeYear"));
    for (QComboBox* choice : {m_by, m_level, m_year})
        choice->setSizeAdjustPolicy(QComboBox::AdjustToContents);
    m_ownWords->setObjectName(QStringLiteral("ownWords"));
    m_takeOver->setObjectName(QStringLiteral("ownTakeOver"));
    m_takeOver->setProperty("primary", true);
    m_tabs->setObjectName(QStringLiteral("resultsTabs"));
    m_by->addItems(
        {tr("taxon"), tr("wood"), tr("stock"), tr("hormone"), tr("medium"), tr("heat"), tr("month")});
    for (const double one : levels) m_level->addItem(tr("%1 %").arg(QLocale().toString(100 * one, 'f', 0)));
    m_level->setCurrentIndex(1);
    m_tabs->setDocumentMode(true); // with no frame for its pages to stand against
    m_tabs->addTab(makeTakes(), tr("&Takes"));
    m_tabs->addTab(makeTrials(), tr("T&rials"));
    m_tabs->addTab(makeOwn(), tr("&Own figures"));
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(20, 16, 20, 12);
    column->addWidget(m_tabs);
    setFocusProxy(m_by);
    for (QComboBox* box : {m_by, m_year})
        connect(box, &QComboBox::currentIndexChanged, this, &ResultsPlace::showTakes);
    connect(m_level, &QComboBox::currentIndexChanged, this, [this] {
        showTakes();
        showTrials();
    });
    connect(m_ownList, &QTreeWidget::currentItemChanged, this, &ResultsPlace::showOwn);
    connect(m_tabs, &QTabWidget::currentChanged, this, &ResultsPlace::showOwn);
    connect(m_takeOver, &QPushButton::clicked, this, &ResultsPlace::takeOver);
}

QWidget* ResultsPlace::makeTakes() {
    auto* page = new QWidget(m_tabs);
    m_takes->setItemDelegateForColumn(TakeBars, m_takeBars);
    m_takes->setHeader(new TakeBarHeader(TakeBars, m_takeBars, m_takes));
    auto* top = new QHBoxLayout;
    const std::pair<QString, QComboBox*> fields[] = {
        {tr("&By", "group"), m_by}, {tr("&Struck in"), m_year}, {tr("&Intervals of"), m_level}};
    for (const auto& [words, box] : fields) {
        auto* label = new QLabel(words, page);
        label->setBuddy(box);
        top->addWidget(label);
        top->addWidget(box);
    }
    top->addStretch(1);
    auto* column = new QVBoxLayout(page);
    column->setContentsMargins(0, 8, 0, 0);
    column->addLayout(top);
    column->addWidget(m_words);
    column->addWidget(m_takes, 1);
    return page;
}

QWidget* ResultsPlace::makeTrials() {
    auto* page = new QWidget(m_tabs);
    m_trials->setItemDelegateForColumn(TrialBars, m_trialBars);
    m_trials->setHeader(new TakeBarHeader(TrialBars, m_trialBars, m_trials));
    auto* column = new QVBoxLayout(page);
    column->setContentsMargins(0, 8, 0, 0);
    column->addWidget(m_trialWords);
    column->addWidget(m_trials, 1);
    column->addWidget(m_verdict);
    m_verdict->setObjectName(QStringLiteral("trialVerdict"));
    connect(m_trials, &QTreeWidget::currentItemChanged, m_verdict, [this](const QTreeWidgetItem* item) {
        m_verdict->setText(item ? item->text(TrialWhat) + QStringLiteral(": ") + item->text(TrialVerdict)
                                : QString());
    });
    return page;
}

QWidget* ResultsPlace::makeOwn() {
    auto* page = new QWidget(m_tabs);
    auto* column = new QVBoxLayout(page);
    column->setContentsMargins(0, 8, 0, 0);
    column->addWidget(m_ownList, 1);
    column->addWidget(m_ownWords);
    column->addWidget(m_refusal);
    column->addWidget(m_takeOver, 0, Qt::AlignLeft);
    return page;
}

double ResultsPlace::level() const {
    return levels[std::clamp(m_level->currentIndex(), 0, 2)];
}

void ResultsPlace::showBook(const BookView& view) {
    m_book = &view.book;
    m_recipes = &view.recipes;
    m_takeBars->setPalette(look());
    m_trialBars->setPalette(look());
    m_refusal->tell(QString());
    offerYears();
    showTakes();
    showTrials();
    showOwnList();
}

void ResultsPlace::offerYears() {
    const QString chosen = m_year->currentText();
    std::set<int> years;
    for (const auto& [id, batch] : m_book->all<Batch>())
        if (batch.state == BatchState::Ended) years.insert(batch.strikeDay.year());
    const QSignalBlocker quiet(m_year);
    m_year->clear();
    m_year->addItem(tr("all years"), 0);
    for (const int year : years) m_year->addItem(QString::number(year), year);
    m_year->setCurrentIndex(std::max(0, m_year->findText(chosen)));
}

void ResultsPlace::showTakes() {
    if (!m_book) return;
    const int year = m_year->currentData().toInt();
    const Day from = year > 0 ? *Day::make(year, 1, 1) : Day::first();
    const Day to = year > 0 ? *Day::make(year, 12, 31) : Day::last();
    const auto grouping = static_cast<take::Grouping>(m_by->currentIndex());
    const auto rows = take::takeTable(*m_book, grouping, level(), from, to);
    const auto groupName = [&](const take::TakeRow& row) {
        if (grouping != take::Grouping::Month) return told(row.group, wording());
        const Day struck = m_book->get<Batch>(row.batches.front()).strikeDay;
        return wording().locale().standaloneMonthName(static_cast<int>(struck.month()));
    };
    m_takes->clear();
    QString head = m_by->currentText();
    m_takes->headerItem()->setText(TakeGroup, head.replace(0, 1, head.at(0).toUpper()));
    const auto percent = [&](double share) { return wording().locale().toString(100 * share, 'f', 0); };
    for (const take::TakeRow& row : rows) {
        auto* item = new QTreeWidgetItem(m_takes);
        item->setText(TakeGroup, groupName(row));
        item->setText(TakeBatches, wording().number(static_cast<int>(row.batches.size())));
        item->setText(TakePlants, tr("%1 of %2")
                                      .arg(wording().number(static_cast<int>(row.take.rooted)),
                                           wording().number(static_cast<int>(row.take.struck))));
        item->setText(TakeShare, tr("%1 % (%2 to %3)")
                                     .arg(percent(row.take.share()), percent(row.interval.low),
                                          percent(row.interval.high)));
        item->setData(
            TakeBars, TakeBarColumn::role,
            QVariant::fromValue(TakeBar{100 * row.interval.low, 100 * row.take.share(),
                                        100 * row.interval.high, 100 * row.recipeLow, 100 * row.recipeHigh}));
        item->setText(TakeRecipe, tr("%1 to %2 %").arg(percent(row.recipeLow), percent(row.recipeHigh)));
        item->setText(TakeAgainst, row.below() ? tr("below") : row.above() ? tr("above") : tr("within"));
        QStringList sources;
        for (const std::string& source : row.sources) sources << text(m_recipes->sourceText(source));
        item->setText(TakeSource, sources.join(QStringLiteral("; ")));
        item->setToolTip(TakeSource, item->text(TakeSource));
        alignRight(*item, {TakeBatches, TakePlants, TakeShare, TakeRecipe});
    }
    fitColumns(*m_takes);
    m_words->setText(
        rows.empty()
            ? tr("No batch has ended yet, so there is no take to show.")
            : tr("Plants potted on of cuttings struck, batches that have ended. The line is Wilson's "
                 "interval, the dot the take, the box what the recipes say."));
}

void ResultsPlace::showTrials() {
    if (!m_book) return;
    m_trials->clear();
    const auto points = [&](double share) { return wording().locale().toString(100 * share, 'f', 0); };
    for (const take::Trial& trial : take::trialsIn(*m_book)) {
        const Batch& batch = m_book->get<Batch>(trial.first.front());
        const take::TrialResult found =
            take::compare(take::takeOf(*m_book, trial.first), take::takeOf(*m_book, trial.second), level());
        const auto way = [&](const std::string& name, const rooting::Take& got) {
            return tr("%1: %2 of %3").arg(text(name)).arg(got.rooted).arg(got.struck);
        };
        auto* item = new QTreeWidgetItem(m_trials);
        item->setText(TrialWhat,
                      tr("%1, %2, %3")
                          .arg(text(m_book->get<Taxon>(batch.taxon).name), wording().wood(batch.recipe.wood),
                               wording().locale().toString(qDate(batch.strikeDay), QLocale::ShortFormat)));
        item->setText(TrialFirst, way(trial.firstWay, found.first));
        item->setText(TrialSecond, way(trial.secondWay, found.second));
        item->setText(TrialDifference, (std::lround(100 * found.difference) == 1 ? tr("%1 point (%2 to %3)")
                                                                                 : tr("%1 points (%2 to %3)"))
                                           .arg(points(found.difference), points(found.interval.low),
                                                points(found.interval.high)));
        item->setData(
            TrialBars, TakeBarColumn::role,
            QVariant::fromValue(TakeBar{
                100 * found.interval.low, 100 * found.difference, 100 * found.interval.high, {}, {}}));
        item->setText(TrialVerdict,
                      found.settled() ? (found.difference > 0 ? tr("the first way gives more")
                                                              : tr("the second way gives more"))
                      : found.cuttingsToSettle
                          ? tr("not settled; if it stays so, %1 cuttings in each way would settle it")
                                .arg(wording().number(static_cast<int>(*found.cuttingsToSettle)))
                          : tr("not settled; they are too alike for any number of cuttings"));
        item->setToolTip(TrialVerdict, item->text(TrialVerdict));
        alignRight(*item, {TrialDifference});
    }
    fitColumns(*m_trials);
    m_trials->setCurrentItem(m_trials->topLevelItem(0));
    m_trialWords->setText(
        m_trials->topLevelItemCount() == 0
            ? tr("No trials: no two batches of one stock and wood, struck within a week, differ in hormone, "
                 "medium "
                 "or heat alone.")
            : tr("Batches of one stock and wood, struck within a week, that differ in one way. The line is "
                 "Newcombe's interval of the first way's take less the second's, in points of a hundred."));
}

void ResultsPlace::showOwnList() {
    const int before = std::max(0, m_ownList->indexOfTopLevelItem(m_ownList->currentItem()));
    const QSignalBlocker quiet(m_ownList);
    m_ownList->clear();
    m_ownRecipes.clear();
    for (const auto& [id, recipe] : m_book->all<Recipe>()) {
        const auto [batches, cuttings] = endedOf(*m_book, recipe);
        if (batches == 0) continue;
        m_ownRecipes.push_back(id);
        auto* item = new QTreeWidgetItem(m_ownList);
        item->setText(OwnRecipe, told(recipeTitle(*m_book, recipe)));
        item->setText(OwnBatches, wording().number(batches));
        item->setText(OwnCuttings, wording().number(cuttings));
        item->setText(OwnTake,
                      tr("%1 to %2 %").arg(recipe.takePercent.value.low).arg(recipe.takePercent.value.high));
        item->setText(OwnDays,
                      tr("%1 to %2").arg(recipe.daysToRoot.value.low).arg(recipe.daysToRoot.value.high));
        alignRight(*item, {OwnBatches, OwnCuttings, OwnTake});
    }
    fitColumns(*m_ownList);
    m_ownList->setCurrentItem(m_ownList->topLevelItem(std::min(before, m_ownList->topLevelItemCount() - 1)));
    showOwn();
}

void ResultsPlace::showOwn() {
    m_own.reset();
    m_takeOver->setEnabled(false);
    // Only what is in sight: each recipe's own figures take all of its batches.
    if (!m_book || m_tabs->currentIndex() != 2) return;
    const int row = m_ownList->indexOfTopLevelItem(m_ownList->currentItem());
    if (row < 0 || row >= static_cast<int>(m_ownRecipes.size())) {
        m_ownWords->setText(tr("No batch has ended yet, so there are no figures of your own."));
        return;
    }
    const Recipe& recipe = m_book->get<Recipe>(m_ownRecipes[static_cast<std::size_t>(row)]);
    m_own = take::ownFigures(*m_book, recipe);
    m_takeOver->setEnabled(m_own.has_value());
    if (!m_own) {
        m_ownWords->setText(
            tr("The recipe's own figures don't fit together, so yours can't be weighed with them."));
        return;
    }
    m_ownWords->setText(tr("<b>Yours: take %1 to %2 %, %3 to %4 days to root.</b> %5 plants of %6 cuttings; "
                           "as cuttings of one batch "
                           "share its luck, they count as %7. Drawn towards the recipe where there are few. "
                           "Nothing uses these "
                           "figures until you say so, and undo brings the recipe's back.")
                            .arg(m_own->takePercent.low)
                            .arg(m_own->takePercent.high)
                            .arg(m_own->daysToRoot.low)
                            .arg(m_own->daysToRoot.high)
                            .arg(wording().number(static_cast<int>(m_own->take.rooted)),
                                 wording().number(static_cast<int>(m_own->take.struck)),
                                 wording().number(static_cast<int>(m_own->cuttingsThatCount))));
}

void ResultsPlace::takeOver() {
    if (m_own) m_refusal->tell(perform(take::adoptCommand(*m_book, *m_own)));
}

} // namespace warmbench::ui
