# Keeps the layout of a comment for Doxygen: after its first paragraph the lines of a block of /// stand as they are written,
# because formula, symbols with unit and range, and the worked number are read in columns.
function close_block() {
  if (inside) print (kept ? "\\endverbatim */" : "*/")
  inside = kept = 0
}
# The inline namespace of the version goes: nobody writes it.
/^inline namespace v[0-9]+ \{/ || /^\} \/\/ namespace v[0-9]+/ { close_block(); print ""; next }
/^[ \t]*\/\/\/([^<\/]|$)/ {
  text = $0
  sub(/^[ \t]*\/\/\/ ?/, "", text)
  if (!inside) { inside = first = 1; printf "/** " }
  if (first && text == "") { first = 0; next }
  if (!first && !kept) { kept = 1; print "\n\\verbatim" }
  print text
  next
}
{ close_block(); print }
END { close_block() }
