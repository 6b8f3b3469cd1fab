#include "ui/setup/setup_place.h"

#include "core/book/starting_figures.h"
#include "core/crop/usual_containers.h"
#include "ui/draft/draft_watch.h"
#include "ui/form/labels.h"
#include "ui/setup/bench_form.h"
#include "ui/setup/container_form.h"

#include "ui/setup/house_form.h"
#include "ui/setup/nursery_form.h"
#include "ui/setup/zone_form.h"

#include <QLabel>
#include <QPushButton>
#include <QScrollArea>
#include <QSplitter>
#include <QTreeWidget>
#include <QVBoxLayout>

#include <algorithm>

namespace warmbench::ui {
namespace {

constexpr int rowNumber = Qt::UserRole; ///< of an item: its place in m_rows; headings have none

template <class Id>
struct KindOfId;
template <>
struct KindOfId<NurseryId> {
    using Kind = Nursery;
};
template <>
struct KindOfId<HouseId> {
    using Kind = House;
};
template <>
struct KindOfId<BenchId> {
    using Kind = Bench;
};
template <>
struct KindOfId<ZoneId> {
    using Kind = Zone;
};
template <>
struct KindOfId<ContainerTypeId> {
    using Kind = ContainerType;
};
template <class Id>
using KindOf = typename KindOfId<std::remove_cv_t<Id>>::Kind;

QPushButton* smallButton(const QString& words, const char* name, QWidget* parent) {
    auto* button = new QPushButton(words, parent);
    button->setObjectName(QString::fromLatin1(name));
    return button;
}

} // namespace

SetupPlace::SetupPlace(QWidget* parent)
    : Place(QStringLiteral("setup"), tr("Nursery"), parent), m_list(new QTreeWidget(this)),
      m_addHouse(smallButton(tr("New &house"), "addHouse", this)),
      m_addBench(smallButton(tr("New &bench"), "addBench", this)),
      m_addZone(smallButton(tr("New &zone"), "addZone", this)),
      m_addContainer(smallButton(tr("New &container"), "addContainer", this)),
      m_usual(smallButton(tr("Add the &usual containers"), "addUsualContainers", this)),
      m_title(new QLabel(this)), m_planPart(new QWidget(this)), m_plan(new HousePlan(m_planPart)),
      m_drawBench(smallButton(tr("Draw a b&ench"), "drawBench", m_planPart)),
      m_drawZone(smallButton(tr("Draw a z&one"), "drawZone", m_planPart)),
      m_blockSlots(smallButton(tr("Block slo&ts"), "blockSlots", m_planPart)),
      m_planWords(new QLabel(m_planPart)), m_room(new QScrollArea(this)),
      m_keep(smallButton(tr("&Keep"), "keepThing", this)),
      m_remove(smallButton(tr("&Remove"), "removeThing", this)),
      m_refusal(new TroubleLabel(QStringLiteral("setupRefusal"), this)) {
    build();
}

SetupPlace::~SetupPlace() = default;

void SetupPlace::build() {
    m_list->setObjectName(QStringLiteral("setupList"));
    m_list->setAccessibleName(tr("What the nursery consists of"));
    m_list->setHeaderHidden(true);
    setFocusProxy(m_list);
    auto* side = new QWidget(this);
    auto* list = new QVBoxLayout(side);
    auto* buttons = new QGridLayout;
    buttons->addWidget(m_addHouse, 0, 0);
    buttons->addWidget(m_addBench, 0, 1);
    buttons->addWidget(m_addZone, 1, 0);
    buttons->addWidget(m_addContainer, 1, 1);
    buttons->addWidget(m_usual, 2, 0, 1, 2);
    list->addWidget(m_list, 1);
    list->addLayout(buttons);

    m_room->setWidgetResizable(true);
    m_keep->setProperty("primary", true);
    auto* work = new QWidget(this);
    auto* column = new QVBoxLayout(work);
    column->setContentsMargins(20, 16, 20, 12);
    auto* ends = new QHBoxLayout;
    ends->addWidget(m_keep);
    ends->addWidget(m_remove);
    ends->addStretch(1);
    column->addWidget(m_title);
    column->addWidget(makePlan(), 3);
    column->addWidget(m_room, 2);
    column->addWidget(m_refusal);
    column->addLayout(ends);

    auto* halves = new QSplitter(this);
    halves->addWidget(side);
    halves->addWidget(work);
    halves->setStretchFactor(0, 1);
    halves->setStretchFactor(1, 2);
    auto* whole = new QVBoxLayout(this);
    whole->setContentsMargins(0, 0, 0, 0);
    whole->addWidget(halves);

    connect(m_list, &QTreeWidget::currentItemChanged, this, &SetupPlace::showChosen);
    // What is chosen already is shown again in place of something new that was begun.
    connect(m_list, &QTreeWidget::itemClicked, this, [this] {
        if (m_form && !m_shown) showChosen();
    });
    connect(m_addHouse, &QPushButton::clicked, this, &SetupPlace::startHouse);
    connect(m_addBench, &QPushButton::clicked, this, &SetupPlace::startBench);
    connect(m_addZone, &QPushButton::clicked, this, &SetupPlace::startZone);
    connect(m_addContainer, &QPushButton::clicked, this, &SetupPlace::startContainer);
    connect(m_usual, &QPushButton::clicked, this, [this] {
        Group group{phrase("Add the usual containers").text(), {}};
        for (const ContainerType& type : usualContainers())
            if (m_book->withKey<ContainerType>(type.name).empty())
                group.commands.push_back({Put<ContainerType>{type}});
        m_refusal->tell(perform({group}));
    });
    connect(m_keep, &QPushButton::clicked, this, &SetupPlace::keep);
    connect(m_remove, &QPushButton::clicked, this, &SetupPlace::remove);
}

void SetupPlace::showBook(const BookView& view) {
    m_book = &view.book;
    m_today = view.today;
    m_title->setFont(type().title);
    m_plan->setLook(look(), type(), wording());
    fillList();
    // What is being typed stays, unless the thing itself is not what it was.
    const bool stays = m_form && (!m_shown || contentOf(*m_shown) == m_content);
    if (!stays)
        showChosen();
    else
        showPlan();
}

void SetupPlace::addRow(QTreeWidgetItem* under, const QString& words, const Thing& thing) {
    auto* item = new QTreeWidgetItem(under, {words});
    item->setData(0, rowNumber, static_cast<int>(m_rows.size()));
    m_rows.push_back(thing);
    if (m_shown == thing) m_list->setCurrentItem(item);
}

void SetupPlace::fillList() {
    const QSignalBlocker quiet(m_list);
    m_list->clear();
    m_rows.clear();
    QTreeWidgetItem* root = m_list->invisibleRootItem();
    addRow(root, tr("Nursery and hands"), NurseryId{1});
    for (const auto& [houseId, house] : m_book->all<House>()) {
        addRow(root, text(house.name), houseId);
        QTreeWidgetItem* houseItem = root->child(root->childCount() - 1);
        for (const BenchId benchId : m_book->benchesOf(houseId)) {
            addRow(houseItem, text(m_book->get<Bench>(benchId).name), benchId);
            QTreeWidgetItem* benchItem = houseItem->child(houseItem->childCount() - 1);
            for (const ZoneId zoneId : m_book->zonesOf(benchId)) {
                const Zone& zone = m_book->get<Zone>(zoneId);
                addRow(benchItem,
                       tr("%1, %2%3")
                           .arg(text(zone.name), wording().coverName(zone.cover),
                                zone.mat ? tr(", heated") : QString()),
                       zoneId);
            }
        }
    }
    auto* containers = new QTreeWidgetItem(root, {tr("Containers")});
    containers->setFlags(Qt::ItemIsEnabled);
    for (const auto& [id, type] : m_book->all<ContainerType>()) addRow(containers, text(type.name), id);
    m_list->expandAll();
    if (!m_list->currentItem() && m_form == nullptr) m_list->setCurrentItem(root->child(0));
    m_addBench->setEnabled(chosenHouse().has_value());
    m_addZone->setEnabled(chosenBench().has_value());
    m_usual->setEnabled(m_book->all<ContainerType>().empty());
}

std::optional<SetupPlace::Thing> SetupPlace::chosen() const {
    const QTreeWidgetItem* item = m_list->currentItem();
    if (!item || !item->data(0, rowNumber).isValid()) return std::nullopt;
    return m_rows[static_cast<std::size_t>(item->data(0, rowNumber).toInt())];
}

std::optional<BenchId> SetupPlace::chosenBench() const {
    const auto thing = chosen();
    if (!thing) return std::nullopt;
    if (const auto* zone = std::get_if<ZoneId>(&*thing)) return m_book->get<Zone>(*zone).bench;
    if (const auto* bench = std::get_if<BenchId>(&*thing)) return *bench;
    return std::nullopt;
}

std::optional<HouseId> SetupPlace::chosenHouse() const {
    if (const auto bench = chosenBench()) return m_book->get<Bench>(*bench).house;
    const auto thing = chosen();
    const auto* house = thing ? std::get_if<HouseId>(&*thing) : nullptr;
    if (house) return *house;
    const auto& houses = m_book->all<House>();
    return houses.size() == 1 ? std::optional(houses.begin()->first) : std::nullopt;
}

SetupPlace::Content SetupPlace::contentOf(const Thing& thing) const {
    return std::visit(
        [this](const auto id) -> Content {
            const auto* found = m_book->find<KindOf<decltype(id)>>(id);
            return found ? Content{*found} : Content{};
        },
        thing);
}

ThingForm* SetupPlace::formOf(const Content& content) {
    if (const auto* nursery = std::get_if<Nursery>(&content))
        return new NurseryForm(*nursery, wording(), m_room);
    if (const auto* house = std::get_if<House>(&content)) return new HouseForm(*house, wording(), m_room);
    if (const auto* bench = std::get_if<Bench>(&content)) return new BenchForm(*bench, m_room);
    if (const auto* zone = std::get_if<Zone>(&content))
        return new ZoneForm(*zone, zone->mat.value_or(firstMat(*m_book, *zone)), m_today, wording(), m_room);
    return new ContainerForm(std::get<ContainerType>(content), m_room);
}

void SetupPlace::showChosen() {
    m_addBench->setEnabled(chosenHouse().has_value());
    m_addZone->setEnabled(chosenBench().has_value());
    m_shown = chosen();
    m_content = m_shown ? contentOf(*m_shown) : Content{};
    if (std::holds_alternative<std::monostate>(m_content)) {
        m_shown.reset();
        showForm(nullptr, {}, {});
        return;
    }
    showForm(formOf(m_content), m_list->currentItem()->text(0), keyOf(*m_shown));
}

void SetupPlace::showForm(ThingForm* form, const QString& title, const QString& key,
                          const std::optional<Zone>& drawn) {
    // What is left for another thing without its being kept is offered to be gone on with.
    if (m_watch && m_watch->key() == key)
        m_watch->leave();
    else if (m_watch)
        m_watch->putAside();
    m_form = form;
    m_drawn = drawn;
    delete m_room->takeWidget();
    if (form) {
        m_room->setWidget(form);
        m_watch = new DraftWatch(*form);
        Draft what{name(), key, m_shown ? title : tr("something new for the nursery"), {}, {}};
        what.fresh = !m_shown;
        m_watch->begin(drafts(), what);
    }
    m_title->setText(title);
    m_keep->setVisible(form);
    m_keep->setText(form && !m_shown ? tr("&Add it") : tr("&Keep"));
    m_remove->setVisible(form && m_shown && !std::holds_alternative<NurseryId>(*m_shown));
    m_refusal->tell(Outcome());
    showPlan();
}

void SetupPlace::startHouse() {
    m_shown.reset();
    showForm(formOf(firstHouse(*m_book)), tr("A new house: the figures are only a start, put your own"),
             newKey("house", 0));
}

void SetupPlace::startBench() {
    const HouseId house = *chosenHouse();
    const auto bench = firstBench(*m_book, house);
    if (!bench)
        return m_refusal->tell(tr("%1 is full: no place is left in it for one slot more. Make the house "
                                  "larger, or a bench in it smaller, or put the bench in another house.")
                                   .arg(text(m_book->get<House>(house).name)));
    m_shown.reset();
    showForm(formOf(*bench), tr("A new bench"), newKey("bench", house.number));
}

void SetupPlace::startZone() {
    m_shown.reset();
    const BenchId bench = *chosenBench();
    showForm(formOf(firstZone(*m_book, bench)), tr("A new zone: put your mat's own figures"),
             newKey("zone", bench.number));
}

void SetupPlace::startContainer() {
    m_shown.reset();
    showForm(formOf(ContainerType{}), tr("A new kind of container"), newKey("container", 0));
}

void SetupPlace::keep() {
    const auto command = m_form->command();
    if (!command) return m_refusal->tellUntilChanged(Outcome(command.refusal()), *m_form);
    std::optional<Thing> added;
    if (!m_shown) {
        if (std::get_if<Put<House>>(&command->what)) added = m_book->nextId<House>();
        if (std::get_if<Put<Bench>>(&command->what)) added = m_book->nextId<Bench>();
        if (std::get_if<Put<Zone>>(&command->what)) added = m_book->nextId<Zone>();
        if (std::get_if<Put<ContainerType>>(&command->what)) added = m_book->nextId<ContainerType>();
    }
    const Content before = m_content;
    if (m_watch) m_watch->end(); // before another form takes its place
    const Outcome refusal = added ? perform(*command) : performFitted(*command);
    const bool left = !added && m_shown && contentOf(*m_shown) == before;
    if (m_watch && (refusal || left)) m_watch->again();
    if (!refusal && added) choose(*added);
    if (refusal) return m_refusal->tellUntilChanged(refusal, *m_form);
    m_refusal->tell(Outcome());
}

void SetupPlace::choose(const Thing& thing) {
    m_shown = thing;
    fillList();
    showChosen();
}

void SetupPlace::remove() {
    const Thing leaving = *m_shown;
    if (m_watch) m_watch->end();
    const Outcome refusal = std::visit(
        [this](const auto id) -> Outcome {
            using Kind = KindOf<decltype(id)>;
            if constexpr (std::is_same_v<Kind, Nursery>)
                return Refusal{"nursery", phrase("a book has one")};
            else if constexpr (std::is_same_v<Kind, Bench> || std::is_same_v<Kind, Zone>)
                return performFitted({ClearAway{m_today, id}});
            else
                return perform({Remove<Kind>{id}});
        },
        leaving);
    if (m_watch && m_shown == leaving) m_watch->again();
    m_refusal->tell(refusal);
}

} // namespace warmbench::ui
