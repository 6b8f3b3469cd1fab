#pragma once

#include "ui/place/place.h"
#include "ui/setup/house_plan.h"

#include <map>
#include <optional>

class QLabel;
class QPushButton;
class QScrollArea;
class QTreeWidget;
class QTreeWidgetItem;

namespace warmbench::ui {

class DraftWatch;
class ThingForm;
class TroubleLabel;

/// What the nursery consists of, as a list, the house in plan, and a form of the one thing chosen. Each
/// change is a command that can be undone; what it would do to what stands there is told before it is done.
class SetupPlace : public Place {
    Q_OBJECT
public:
    explicit SetupPlace(QWidget* parent);
    ~SetupPlace() override;
    void showBook(const BookView& view) override;
    bool resume(const Draft& draft) override;

private:
    /// What a row of the list is.
    using Thing = std::variant<NurseryId, HouseId, BenchId, ZoneId, ContainerTypeId>;
    using Content = std::variant<std::monostate, Nursery, House, Bench, Zone, ContainerType>;

    void build();
    bool resumeWith(const Thing& thing, const Draft& draft);
    /// The key of a thing's draft, and that of something new in a thing of a number.
    [[nodiscard]] static QString keyOf(const Thing& thing);
    [[nodiscard]] static QString newKey(const char* kind, std::int64_t in);
    [[nodiscard]] QWidget* makePlan();
    void showPlan();
    void takeDrawn(const PlanShape& shape);
    Outcome performFitted(const Command& command);
    void fillList();
    void addRow(QTreeWidgetItem* under, const QString& words, const Thing& thing);
    void showChosen();
    void showForm(ThingForm* form, const QString& title, const QString& key,
                  const std::optional<Zone>& drawn = std::nullopt);
    [[nodiscard]] ThingForm* formOf(const Content& content);
    [[nodiscard]] Content contentOf(const Thing& thing) const;
    void keep();
    void remove();
    void startHouse();
    void startBench();
    void startZone();
    /// Asks what covers a zone that was drawn, and for its mat, before it is put in.
    void startDrawn(const Zone& zone);
    void startContainer();
    void choose(const Thing& thing);
    [[nodiscard]] std::optional<Thing> chosen() const;
    [[nodiscard]] std::optional<HouseId> chosenHouse() const;
    [[nodiscard]] std::optional<BenchId> chosenBench() const;

    const HouseBook* m_book = nullptr; ///< that of the latest view
    Day m_today;
    std::vector<Thing> m_rows;    ///< of the list, by the number each item holds
    std::optional<Thing> m_shown; ///< in the form; nothing for something new
    Content m_content;            ///< the same as it was when the form was filled in
    std::optional<Zone> m_drawn;  ///< the zone that the form asks about, as it was drawn
    QTreeWidget* m_list;
    QPushButton* m_addHouse;
    QPushButton* m_addBench;
    QPushButton* m_addZone;
    QPushButton* m_addContainer;
    QPushButton* m_usual;
    QLabel* m_title;
    QWidget* m_planPart;
    HousePlan* m_plan;
    QPushButton* m_drawBench;
    QPushButton* m_drawZone;
    QPushButton* m_blockSlots;
    QLabel* m_planWords;
    QScrollArea* m_room;
    ThingForm* m_form = nullptr;
    QPointer<DraftWatch> m_watch; ///< of the form
    QPushButton* m_keep;
    QPushButton* m_remove;
    TroubleLabel* m_refusal;
};

} // namespace warmbench::ui
