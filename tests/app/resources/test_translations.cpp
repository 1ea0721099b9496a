// SPDX-License-Identifier: GPL-3.0-or-later
// Every text of the source has its German; what stands in both is the same in both. The texts are collected anew, as
// `ninja update_translations` does it, so that one that nobody collected is counted too.
#include <QDir>
#include <QFile>
#include <QProcess>
#include <QRegularExpression>
#include <QTemporaryDir>
#include <QXmlStreamReader>

#include "tests/support/registry.h"

namespace {

const QString kSource = QStringLiteral(HOWLMAP_SOURCE_DIR);
const QString kFolder = kSource + QStringLiteral("/resources/translations/");

struct Message {
    QString context, source, translation;
    bool unfinished;
};

Message message_at(QXmlStreamReader& xml, const QString& context) {
    Message message{context, {}, {}, false};
    while (xml.readNextStartElement()) {
        if (xml.name() == u"source") {
            message.source = xml.readElementText();
        } else if (xml.name() == u"translation") {
            message.unfinished = xml.attributes().value(QLatin1StringView("type")) == u"unfinished";
            if (QString one = xml.readElementText(QXmlStreamReader::IncludeChildElements); !one.isEmpty())
                message.translation = one;
            else
                message.unfinished = true;
        } else {
            xml.skipCurrentElement();
        }
    }
    return message;
}

QList<Message> messages_of(const QString& name) {
    QFile file(name);
    if (!file.open(QIODevice::ReadOnly)) return {};
    QXmlStreamReader xml(&file);
    QList<Message> messages;
    QString context;
    while (!xml.atEnd()) {
        if (!xml.readNextStartElement()) continue;
        if (xml.name() == u"name") context = xml.readElementText();
        if (xml.name() == u"message") messages.append(message_at(xml, context));
    }
    return messages;
}

/// What a program says in a folder; what it prints goes to a file if one is named.
bool ran(const QString& folder, const QString& program, const QStringList& arguments, const QString& into = {}) {
    QProcess process;
    process.setWorkingDirectory(folder);
    if (!into.isEmpty()) process.setStandardOutputFile(into);
    process.start(program, arguments);
    return process.waitForFinished(120000) && process.exitStatus() == QProcess::NormalExit && process.exitCode() == 0;
}

/// Collects the texts of a folder's app/ and core/ into a copy of the German file: the messages that it then holds.
QList<Message> collected(const QString& folder, const QTemporaryDir& work) {
    const QString copy = work.filePath(QStringLiteral("de.ts")),
                  by_helpers = work.filePath(QStringLiteral("texts.cpp"));
    QFile::remove(copy);
    if (!QFile::copy(kFolder + QStringLiteral("howlmap_de.ts"), copy)) return {};
    const QStringList folders{QStringLiteral("app"), QStringLiteral("core")};
    if (!ran(folder, QStringLiteral("python3"), QStringList{kFolder + QStringLiteral("collect.py")} + folders,
             by_helpers))
        return {};
    if (!ran(folder, qEnvironmentVariable("HOWLMAP_LUPDATE"),
             QStringList{QStringLiteral("-silent"), QStringLiteral("-I"), QStringLiteral("."),
                         QStringLiteral("-locations"), QStringLiteral("none"), QStringLiteral("-no-obsolete"),
                         QStringLiteral("-source-language"), QStringLiteral("en"), QStringLiteral("-target-language"),
                         QStringLiteral("de")} +
                 folders + QStringList{by_helpers, QStringLiteral("-ts"), copy}))
        return {};
    return messages_of(copy);
}

QStringList unfinished(const QList<Message>& messages) {
    QStringList found;
    for (const Message& message : messages)
        if (message.unfinished) found.append(message.context + QStringLiteral(": ") + message.source);
    return found;
}

QStringList all_matches(const QString& text, const char* pattern) {
    QStringList found;
    for (auto it = QRegularExpression(QLatin1StringView(pattern)).globalMatch(text); it.hasNext();)
        found.append(it.next().captured());
    return found;
}

QStringList sorted(QStringList list) {
    list.sort();
    return list;
}

}  // namespace

class TranslationsTest : public QObject {
    Q_OBJECT
    QTemporaryDir work_;

  private Q_SLOTS:
    void nothingIsUnfinished() {
        const QList<Message> now = collected(kSource, work_);
        QVERIFY2(now.size() > 1500, "the texts could not be collected");
        const QStringList left = unfinished(now);
        QVERIFY2(left.isEmpty(),
                 qPrintable(QString::number(left.size()) + QStringLiteral(" without German, such as\n") +
                            left.mid(0, 10).join(u'\n')));
        QCOMPARE(messages_of(kFolder + QStringLiteral("howlmap_de.ts")).size(), now.size());
    }

    /// The count above must see a text however it comes to translate().
    void theCollectorFindsTextsInEveryWayTheyAreHandedOver() {
        const QString tree = kSource + QStringLiteral("/tests/support/texts");
        QMultiMap<QString, QString> found;
        for (const Message& message : collected(tree, work_)) found.insert(message.context, message.source);
        const auto in = [&](const char* context) { return sorted(found.values(QLatin1StringView(context))); };
        QCOMPARE(in("alpha"), sorted({QStringLiteral("by a function"), QStringLiteral("by its other return"),
                                      QStringLiteral("by a variable"), QStringLiteral("by its branch"),
                                      QStringLiteral("by a lambda {}"), QStringLiteral("by its second place"),
                                      QStringLiteral("by a template {}")}));
        QCOMPARE(in("beta"), QStringList{QStringLiteral("by a declaration")});
        QCOMPARE(in("gamma"), QStringList{QStringLiteral("by a mark")});
        QCOMPARE(in("delta"), sorted({QStringLiteral("by a condition"), QStringLiteral("by two pieces")}));
        QCOMPARE(found.size(), 11);
        QCOMPARE(unfinished(collected(tree, work_)).size(), 11);
    }

    void whatStandsInBothIsTheSame() {
        for (const Message& message : messages_of(kFolder + QStringLiteral("howlmap_de.ts"))) {
            const QString &english = message.source, &german = message.translation;
            const QString both = message.context + QStringLiteral(": ") + english + u'\n' + german;
            const auto same = [&](const char* pattern) {
                QVERIFY2(sorted(all_matches(german, pattern)) == sorted(all_matches(english, pattern)),
                         qPrintable(both));
            };
            same("%L?\\d|%n");        // Qt's places
            same("<[^>]*>");          // tags
            same("^\\s+|\\s+$|\\n");  // white space at the ends
            same(":$");
            // Places of fmt follow each other, so their order counts; "{:g}" must not become "{}".
            QVERIFY2(english.contains(QStringLiteral("{0}")) ||
                         all_matches(german, "\\{[^}]*\\}") == all_matches(english, "\\{[^}]*\\}"),
                     qPrintable(both));
            QVERIFY2(all_matches(german, "&[^ ;]").size() == all_matches(english, "&[^ ;]").size(), qPrintable(both));
        }
    }
};

HOWLMAP_TEST(TranslationsTest)
#include "test_translations.moc"
