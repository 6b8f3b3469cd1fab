#pragma once

#include <QJsonObject>
#include <QList>
#include <QLockFile>
#include <QObject>
#include <QTimer>

#include <memory>

namespace warmbench::ui {

/// What was typed into a form and is not in the book yet.
struct Draft {
    QString place;        ///< the name of the place that the form belongs to
    QString key;          ///< which of the place's forms, in the place's own words
    QString words;        ///< what it is, for a person: `a new target`
    QString day;          ///< the day that the form was about, ISO 8601; empty where it is about none
    QJsonObject fields;   ///< by the names of the form's fields
    bool left = false;    ///< put aside, or over from a program that ended, and not gone on with yet
    bool gone = false;    ///< what it was about was looked for, and is not there any more
    QString told{};       ///< the fields that were changed, a line each, to be read and copied
    QJsonObject before{}; ///< the fields as they were before anything was typed
    bool fresh = false;   ///< of a thing that is not in the book: every field counts, whatever it was before
};

/// The drafts of one book, in a file beside it that is there only while there are any. A program that is
/// killed leaves it behind; the next one finds it. Several programs that have the same book open have a file
/// each (`NAME`, `NAME-2`, ...). Where nothing can be written, nothing is kept, and nobody's work is
/// hindered.
class Drafts : public QObject {
    Q_OBJECT
public:
    /// `file` is the file's name; with none nothing outlives the window.
    explicit Drafts(QString file, QObject* parent = nullptr);
    ~Drafts() override;

    [[nodiscard]] const QList<Draft>& all() const { return m_drafts; }
    /// One that is not left from before.
    [[nodiscard]] const Draft* find(const QString& place, const QString& key) const;
    /// Keeps one in the place of the one of the same place and key; it is on the disk within half a second.
    void keep(const Draft& draft);
    void drop(const QString& place, const QString& key);
    /// One that was left is gone on with, is left after all, or is thrown away.
    void take(const Draft& left);
    void giveBack(const Draft& left);
    /// One that was given back is about nothing any more.
    void setGone(const Draft& left);
    void dropLeft(const Draft& left);
    /// Writes now what forms have not told yet.
    void flush();

Q_SIGNALS:
    /// Forms are to tell what stands in them.
    void toldNow();
    void changed();

private:
    [[nodiscard]] qsizetype indexOf(const QString& place, const QString& key, bool left = false) const;
    void soon();
    bool lock(const QString& file);
    void read();
    void write();

    QString m_name;
    QString m_file; ///< this program's own; empty until there is something to keep
    std::unique_ptr<QLockFile> m_lock;
    QList<Draft> m_drafts;
    QTimer m_soon;
};

} // namespace warmbench::ui
