// SPDX-License-Identifier: GPL-3.0-or-later
// A language whose words are two fifths longer and full of accents: on a screen of 1280 x 800 nothing is cut off, and
// no text has been forgotten in English.
#include <QAbstractButton>
#include <QAbstractSpinBox>
#include <QComboBox>
#include <QLabel>
#include <QScrollArea>
#include <QTranslator>

#include "core/units/translate.h"
#include "tests/app/window/windows.h"
#include "tests/support/registry.h"

namespace howlmap::app {
namespace {

constexpr char16_t kAccents[] = u"áƀçđéƒǵĥíĵķĺḿńóṕqŕšťúṽŵẋýž";

/// The text in the long language: places, tags and the mark of the access key stay.
QString lengthened(const QString& text) {
    QString out;
    int letters = 0;
    QChar until;  // inside a place or a tag
    for (qsizetype i = 0; i < text.size(); ++i) {
        const QChar c = text[i];
        if (!until.isNull()) {
            if (c == until) until = {};
        } else if (c == u'{' || c == u'<') {
            until = c == u'{' ? u'}' : u'>';
        } else if ((c == u'%' || c == u'&') && i + 1 < text.size()) {
            out += c;
            out += text[++i];
            continue;
        } else if (c >= u'a' && c <= u'z') {
            ++letters;
            out += QChar(kAccents[c.unicode() - u'a']);
            continue;
        }
        out += c;
    }
    // The longer part goes before a colon, dots or white space at the end, as words would.
    qsizetype end = out.size();
    while (end > 0 && !out[end - 1].isLetterOrNumber() && out[end - 1] != u'}' && out[end - 1] != u'>') --end;
    return letters < 2 ? out : out.insert(end, QString((letters * 2 + 4) / 5, u'ö'));
}

class LongWords : public QTranslator {
  public:
    bool isEmpty() const override { return false; }
    QString translate(const char* context, const char* text, const char*, int) const override {
        // Qt's own windows and shortcuts speak their own language.
        if (QLatin1StringView(context).startsWith(QLatin1StringView("Q"))) return {};
        return lengthened(QString::fromUtf8(text));
    }
};

/// The room that a widget's text needs and does not get; empty if it has it.
QString cut_off(const QWidget& widget) {
    QSize need;
    QString text;
    if (const auto* label = qobject_cast<const QLabel*>(&widget)) {
        text = label->text();
        if (text.isEmpty() || !label->pixmap().isNull()) return {};
        need = label->wordWrap() ? QSize(label->minimumSizeHint().width(), label->heightForWidth(label->width()))
                                 : label->sizeHint();
    } else if (const auto* button = qobject_cast<const QAbstractButton*>(&widget)) {
        text = button->text();
        if (text.isEmpty()) return {};
        need = button->sizeHint();
    } else {
        return {};
    }
    const QSize has = widget.size();
    if (has.width() >= need.width() && has.height() >= need.height()) return {};
    return QStringLiteral("%1 \"%2\": needs %3 x %4, has %5 x %6")
        .arg(widget.objectName().isEmpty() ? QLatin1StringView(widget.metaObject()->className()) : widget.objectName(),
             text.left(60))
        .arg(need.width())
        .arg(need.height())
        .arg(has.width())
        .arg(has.height());
}

}  // namespace

class TestLongWords : public QObject {
    Q_OBJECT
    LongWords long_words_;

  private Q_SLOTS:
    void initTestCase() {
        QCoreApplication::installTranslator(&long_words_);
        set_translator([](const char* context, const char* english) {
            return QCoreApplication::translate(context, english).toStdString();
        });
    }
    void cleanupTestCase() {
        set_translator({});
        QCoreApplication::removeTranslator(&long_words_);
    }
    void wordsGetLongerAndPlacesStay() {
        QCOMPARE(lengthened(QStringLiteral("&Save as...")), QStringLiteral("&Sáṽé ášööö..."));
        QCOMPARE(lengthened(QStringLiteral("{:.1f} dB by %1")), QStringLiteral("{:.1f} đB ƀý %1öö"));
    }
    void nothingIsCutOff() {
        QStringList found;
        for_every_window([&](QWidget& window, const QString& name) {
            QVERIFY2(window.window()->width() <= 1280 && window.window()->height() <= 800, qPrintable(name));
            for (const QWidget* widget : window.findChildren<QWidget*>())
                if (const QString cut = widget->isVisible() ? cut_off(*widget) : QString(); !cut.isEmpty())
                    found.append(name + QStringLiteral(", ") + cut);
            if (const QString folder = qEnvironmentVariable("HOWLMAP_PICTURES"); !folder.isEmpty())
                window.grab().save(folder + QStringLiteral("/long-") + name + QStringLiteral(".png"));
        });
        found.removeDuplicates();
        QVERIFY2(found.isEmpty(), qPrintable(u'\n' + found.join(u'\n')));
    }
    void nothingIsLeftInEnglish() {
        QStringList found;
        // Words of the show, names of notes and units stand as they are; a sentence of three plain words does not.
        static const QRegularExpression english(QStringLiteral("\\b[a-z]{3,} [a-z]{2,} [a-z]{3,}\\b"));
        for_every_window([&](QWidget& window, const QString& name) {
            for (const QWidget* widget : window.findChildren<QWidget*>()) {
                QStringList texts{widget->toolTip(), widget->accessibleName(), widget->whatsThis(),
                                  widget->statusTip()};
                if (const auto* label = qobject_cast<const QLabel*>(widget)) texts.append(label->text());
                if (const auto* button = qobject_cast<const QAbstractButton*>(widget)) texts.append(button->text());
                if (const auto* box = qobject_cast<const QComboBox*>(widget))
                    for (int i = 0; i < box->count(); ++i) texts.append(box->itemText(i));
                for (const QString& text : texts)
                    if (text.contains(english)) found.append(name + QStringLiteral(": ") + text.left(100));
            }
            for (const QAction* action : window.findChildren<QAction*>())
                for (const QString& text : {action->text(), action->statusTip()})
                    if (text.contains(english)) found.append(name + QStringLiteral(": ") + text.left(100));
        });
        found.removeDuplicates();
        QVERIFY2(found.isEmpty(), qPrintable(u'\n' + found.join(u'\n')));
    }
};

HOWLMAP_TEST(TestLongWords)

}  // namespace howlmap::app

#include "test_long_words.moc"
