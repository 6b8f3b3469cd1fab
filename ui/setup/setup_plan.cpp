#include "core/book/refit.h"
#include "core/book/starting_figures.h"
#include "ui/form/labels.h"
#include "ui/setup/refit_dialog.h"
#include "ui/setup/refit_words.h"
#include "ui/setup/setup_place.h"
#include "ui/setup/thing_form.h"

#include <QLabel>
#include <QPushButton>
#include <QScrollArea>
#include <QVBoxLayout>

/// The house in plan, and changes of what stands in it.
namespace warmbench::ui {
namespace {

/// What the forms put in, as a change that takes care of what stands there; nothing where none can.
std::optional<Refit> refitFor(const HouseBook& book, const Command& command, Day day) {
    if (const auto* bench = std::get_if<Put<Bench>>(&command.what)) return Refit{day, bench->thing};
    if (const auto* put = std::get_if<Put<Zone>>(&command.what)) {
        const Zone before = book.get<Zone>(put->thing.id);
        Zone zone = put->thing;
        zone.row = before.row;
        zone.col = before.col;
        zone.rows = before.rows;
        zone.cols = before.cols;
        return Refit{day, reshaped(zone, put->thing.onBench())};
    }
    if (const auto* refit = std::get_if<Refit>(&command.what)) return *refit;
    return std::nullopt;
}

} // namespace

QWidget* SetupPlace::makePlan() {
    m_planWords->setObjectName(QStringLiteral("planWords"));
    m_planWords->setProperty("rank", QStringLiteral("quiet"));
    m_planWords->setWordWrap(true);
    m_blockSlots->setToolTip(
        tr("Click slots of a zone that take no container, or drag over them; by keys, arrows go from "
           "slot to slot, Space blocks one or frees it, Enter keeps that."));
    for (QPushButton* tool : {m_drawBench, m_drawZone, m_blockSlots}) tool->setCheckable(true);
    auto* tools = new QHBoxLayout;
    tools->addWidget(m_drawBench);
    tools->addWidget(m_drawZone);
    tools->addWidget(m_blockSlots);
    tools->addWidget(m_planWords, 1);
    auto* column = new QVBoxLayout(m_planPart);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(m_plan, 1);
    column->addLayout(tools);
    connect(m_plan, &HousePlan::told, m_planWords, &QLabel::setText);
    connect(m_plan, &HousePlan::chosen, this,
            [this](const PlanThing& thing) { std::visit([this](const auto id) { choose(id); }, thing); });
    connect(m_plan, &HousePlan::wanted, this, &SetupPlace::takeDrawn);
    connect(m_plan, &HousePlan::toolChanged, this, [this](HousePlan::Tool tool) {
        m_drawBench->setChecked(tool == HousePlan::Tool::DrawBench);
        m_drawZone->setChecked(tool == HousePlan::Tool::DrawZone);
        m_blockSlots->setChecked(tool == HousePlan::Tool::BlockSlots);
    });
    connect(m_drawBench, &QPushButton::clicked, this,
            [this](bool on) { m_plan->setTool(on ? HousePlan::Tool::DrawBench : HousePlan::Tool::Choose); });
    connect(m_drawZone, &QPushButton::clicked, this,
            [this](bool on) { m_plan->setTool(on ? HousePlan::Tool::DrawZone : HousePlan::Tool::Choose); });
    connect(m_blockSlots, &QPushButton::clicked, this,
            [this](bool on) { m_plan->setTool(on ? HousePlan::Tool::BlockSlots : HousePlan::Tool::Choose); });
    return m_planPart;
}

void SetupPlace::showPlan() {
    const std::optional<HouseId> house =
        m_drawn ? std::optional(m_book->get<Bench>(m_drawn->bench).house) : chosenHouse();
    if (m_drawn) {
        m_planPart->show();
        m_plan->show(*m_book, house, m_today);
        m_plan->choose(m_drawn->bench);
        m_plan->propose(*m_drawn);
        m_planWords->setText(
            tr("The new zone as it was drawn. What covers it, and its mat, is asked below."));
        return;
    }
    const bool inHouse = m_shown && !std::holds_alternative<NurseryId>(*m_shown) &&
                         !std::holds_alternative<ContainerTypeId>(*m_shown);
    m_planPart->setVisible(house && inHouse);
    m_plan->show(*m_book, house && inHouse ? house : std::nullopt, m_today);
    if (!house || !inHouse) return;
    if (const auto* id = std::get_if<HouseId>(&*m_shown)) m_plan->choose(*id);
    if (const auto* id = std::get_if<BenchId>(&*m_shown)) m_plan->choose(*id);
    if (const auto* id = std::get_if<ZoneId>(&*m_shown)) m_plan->choose(*id);
}

void SetupPlace::takeDrawn(const PlanShape& shape) {
    if (const auto* house = std::get_if<House>(&shape)) return m_refusal->tell(perform({Put<House>{*house}}));
    const auto* bench = std::get_if<Bench>(&shape);
    const auto* zone = std::get_if<Zone>(&shape);
    if (zone && zone->id.number == 0) return startDrawn(*zone);
    if (bench && bench->id.number == 0) {
        const Thing added = m_book->nextId<Bench>();
        const Outcome refusal = perform({Put<Bench>{*bench}});
        if (!refusal) choose(added);
        return m_refusal->tell(refusal);
    }
    m_refusal->tell(performFitted(bench ? Command{Refit{m_today, *bench}} : Command{Refit{m_today, *zone}}));
}

void SetupPlace::startDrawn(const Zone& zone) {
    m_shown.reset();
    showForm(formOf(zone), tr("A new zone: what covers it, and does it lie on a mat?"),
             newKey("zone", zone.bench.number), zone);
    if (auto* cover = m_form->findChild<QWidget*>(QStringLiteral("zoneCover"))) {
        cover->setFocus();
        m_room->ensureWidgetVisible(cover);
    }
}

/// Does what may touch what stands there, once she has seen what that would be; left as it is, nothing is
/// refused either.
Outcome SetupPlace::performFitted(const Command& command) {
    const auto refit = refitFor(*m_book, command, m_today);
    const auto* clear = std::get_if<ClearAway>(&command.what);
    if (!refit && !clear) return perform(command);
    const auto effect = refit ? effectOf(*m_book, *refit) : effectOf(*m_book, *clear);
    if (!effect) return effect.refusal();
    if (!effect->empty() &&
        RefitDialog(refitWords(*m_book, *effect, wording()), this).exec() != QDialog::Accepted) {
        showPlan();
        return std::nullopt;
    }
    return perform(refit ? Command{*refit} : command);
}

} // namespace warmbench::ui
