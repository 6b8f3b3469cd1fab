#pragma once

#include "ui/shell/facts.h"
#include "ui/theme/type.h"

#include <QScrollArea>

class QLabel;
class QPushButton;
class QVBoxLayout;

namespace warmbench::ui {

/// Shows the facts of what is selected, and offers what can be done with it.
class FactPanel : public QScrollArea {
    Q_OBJECT
public:
    explicit FactPanel(QWidget* parent = nullptr);

    void setType(const TypeSizes& type);
    void show(const Facts& facts);

Q_SIGNALS:
    void strikeWanted(warmbench::BatchId batch);

private:
    QLabel* addText(const QString& text, const QFont& font, const char* rank);
    void addFact(const Fact& fact);

    TypeSizes m_type;
    QWidget* m_page = nullptr;
    QVBoxLayout* m_column = nullptr;
};

} // namespace warmbench::ui
