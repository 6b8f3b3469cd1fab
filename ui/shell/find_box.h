#pragma once

#include "ui/shell/find_entries.h"

#include <QLineEdit>

#include <functional>

class QStandardItemModel;

namespace warmbench::ui {

/// The field in which anything of the book is found as one types.
class FindBox : public QLineEdit {
    Q_OBJECT
public:
    /// What holds the words typed.
    using Source = std::function<QList<FindEntry>(const QString& typed)>;

    explicit FindBox(QWidget* parent = nullptr);
    void setSource(Source source) { m_source = std::move(source); }
    [[nodiscard]] QSize sizeHint() const override;

Q_SIGNALS:
    void found(const warmbench::ui::Selection& selection);

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    /// Lists what holds the words typed, or says that nothing does.
    void search(const QString& typed);
    /// Goes to the entry of these words; false where there is none.
    bool goTo(const QString& words);

    Source m_source;
    QList<FindEntry> m_entries; ///< as they stand in the list under the field
    QStandardItemModel* m_words;
};

} // namespace warmbench::ui
